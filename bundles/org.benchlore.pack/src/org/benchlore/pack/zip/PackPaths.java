// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.util.regex.Pattern;

import org.benchlore.model.Kind;

/** The paths that a pack may hold: those of a library's elements, and plain names below the folder media. */
public final class PackPaths {

    static final String MEDIA = "media/";

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 _-]|\\.(?=[A-Za-z0-9]))*");
    private static final Pattern DEVICE = Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");
    private static final int DEEPEST = 6;
    private static final int LONGEST = 200;

    private PackPaths() {
    }

    static boolean isAllowed(String path) {
        return isMedia(path) || isElement(path);
    }

    /**
     * Tells whether a path is that of a picture.
     *
     * @param path path below a library
     * @return true for plain names below the folder media
     */
    public static boolean isMedia(String path) {
        if (!path.startsWith(MEDIA) || path.length() > LONGEST) {
            return false;
        }
        var parts = path.split("/", -1);
        for (var part : parts) {
            if (!NAME.matcher(part).matches() || DEVICE.matcher(part).matches() || part.endsWith(" ")) {
                return false;
            }
        }
        return parts.length <= DEEPEST;
    }

    private static boolean isElement(String path) {
        if (!path.endsWith(Kind.ENDING)) {
            return false;
        }
        var id = path.substring(path.lastIndexOf('/') + 1, path.length() - Kind.ENDING.length());
        for (var kind : Kind.values()) {
            try {
                if (kind != Kind.GLOSSARY && kind.path(id).equals(path)) {
                    return true;
                }
            } catch (IllegalArgumentException e) {
                // No id of this kind.
                continue;
            }
        }
        return false;
    }
}
