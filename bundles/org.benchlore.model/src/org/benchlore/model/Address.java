// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model;

/**
 * Where an element stands: a file of the library and the id in it, written {@code parts/shim-kit.xmi#shim-kit}.
 *
 * @param path path of the file below the library, with forward slashes
 * @param id id of the element in that file
 */
public record Address(String path, String id) implements Comparable<Address> {

    /**
     * Reads an address.
     *
     * @param text path, {@code #} and id
     * @return the address
     * @throws IllegalArgumentException if there is no {@code #} between two texts
     */
    public static Address parse(String text) {
        int hash = text.indexOf('#');
        if (hash <= 0 || hash == text.length() - 1) {
            throw new IllegalArgumentException("'" + text + "' is no address: write file#id");
        }
        return new Address(text.substring(0, hash), text.substring(hash + 1));
    }

    @Override
    public int compareTo(Address other) {
        int byPath = path.compareTo(other.path);
        return byPath != 0 ? byPath : id.compareTo(other.id);
    }

    @Override
    public String toString() {
        return path + "#" + id;
    }
}
