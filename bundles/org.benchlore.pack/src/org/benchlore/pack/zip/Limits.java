// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

/**
 * How much a pack may hold. A pack that is more is either a mistake or made to fill a disk.
 *
 * @param files most files
 * @param fileBytes most bytes of one file
 * @param totalBytes most bytes of all files together
 * @param ratio most times that a file may grow when it is unpacked, where it is larger than {@code freeBytes}
 * @param freeBytes files up to this size may grow as they like
 */
public record Limits(int files, long fileBytes, long totalBytes, int ratio, long freeBytes) {

    /**
     * Returns the limits of every pack that is taken.
     *
     * @return 50,000 files, 26 MB a file, 2 GB together, 60 times beyond 256 KB
     */
    public static Limits usual() {
        return new Limits(50_000, 26_000_000, 2_000_000_000L, 60, 256 * 1024);
    }
}
