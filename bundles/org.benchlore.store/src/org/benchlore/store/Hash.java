// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of bytes. */
public final class Hash {

    private Hash() {
    }

    /**
     * Returns the hash of bytes.
     *
     * @param bytes any bytes
     * @return 64 lower-case hexadecimal digits
     */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
