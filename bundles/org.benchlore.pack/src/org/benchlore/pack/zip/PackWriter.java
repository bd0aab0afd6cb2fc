// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.benchlore.pack.PackedLibrary;

/** Writes a library pack: the list of contents first, then every file by path. The same contents give the same bytes. */
public final class PackWriter {

    /** 1 January 1980, the first day that a zip can name: nothing in a pack depends on the clock but the day it was made. */
    private static final long NO_TIME = new java.util.GregorianCalendar(1980, 0, 1).getTimeInMillis();

    private PackWriter() {
    }

    /**
     * Writes a pack.
     *
     * @param packed what goes in
     * @param manifest its list of contents
     * @param out where the zip goes; it is not closed
     * @throws IOException if it cannot be written
     */
    public static void write(PackedLibrary packed, Manifest manifest, OutputStream out) throws IOException {
        var zip = new ZipOutputStream(out);
        zip.setLevel(Deflater.BEST_COMPRESSION);
        put(zip, Manifest.NAME, manifest.bytes());
        for (var path : manifest.files().keySet()) {
            put(zip, path, packed.bytes(path));
        }
        zip.finish();
    }

    private static void put(ZipOutputStream zip, String path, byte[] bytes) throws IOException {
        var entry = new ZipEntry(path);
        entry.setTime(NO_TIME);
        if (isPicture(path)) {
            stored(entry, bytes);
        }
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    /** Pictures are small already; a drawing of repeated lines might look like a bomb when packed. */
    private static boolean isPicture(String path) {
        return path.startsWith(PackPaths.MEDIA);
    }

    private static void stored(ZipEntry entry, byte[] bytes) {
        var sum = new CRC32();
        sum.update(bytes);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(bytes.length);
        entry.setCrc(sum.getValue());
    }
}
