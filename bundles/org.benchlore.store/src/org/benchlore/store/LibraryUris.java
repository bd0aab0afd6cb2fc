// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.util.Arrays;
import java.util.Optional;

import org.benchlore.model.Address;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;

/** Turns library paths into the addresses that EMF works with, and back. No address leads out of the library. */
public final class LibraryUris {

    private static final String SCHEME = "library";

    private LibraryUris() {
    }

    /**
     * Returns the address of a file.
     *
     * @param path path below the library
     * @return its address, the same for every library
     */
    public static URI of(String path) {
        return URI.createHierarchicalURI(SCHEME, null, null, path.split("/"), null, null);
    }

    /** Returns where an unresolved reference points, or empty if it points out of the library. */
    static Optional<Address> target(InternalEObject proxy) {
        return target(proxy.eProxyURI());
    }

    static Optional<Address> target(URI uri) {
        if (uri == null || !SCHEME.equals(uri.scheme()) || uri.authority() != null || uri.query() != null
                || uri.device() != null || uri.segmentCount() == 0 || uri.fragment() == null) {
            return Optional.empty();
        }
        if (Arrays.stream(uri.segments()).anyMatch(LibraryUris::isUnsafe)) {
            return Optional.empty();
        }
        return Optional.of(new Address(String.join("/", uri.segments()), uri.fragment()));
    }

    private static boolean isUnsafe(String segment) {
        return segment.isEmpty() || segment.startsWith(".") || segment.contains("\\") || segment.contains(":")
                || segment.contains("%");
    }
}
