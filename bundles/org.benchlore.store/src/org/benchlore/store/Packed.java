// SPDX-License-Identifier: EPL-2.0
package org.benchlore.store;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.benchlore.model.Address;

/** How texts, addresses and lists stand in the kept catalogue: texts in UTF-8, each with its length before it. */
final class Packed {

    private Packed() {
    }

    static void address(DataOutputStream out, Address address) throws IOException {
        text(out, address.path());
        text(out, address.id());
    }

    static Address address(DataInputStream in) throws IOException {
        return new Address(text(in), text(in));
    }

    static void text(DataOutputStream out, String text) throws IOException {
        var bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }

    interface Writer<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    interface Reader<T> {
        T read(DataInputStream in) throws IOException;
    }

    static <T> void writeAll(DataOutputStream out, Collection<T> values, Writer<T> writer) throws IOException {
        out.writeInt(values.size());
        for (var value : values) {
            writer.write(out, value);
        }
    }

    static <T> List<T> readAll(DataInputStream in, Reader<T> reader) throws IOException {
        int size = in.readInt();
        var values = new ArrayList<T>();
        for (int i = 0; i < size; i++) {
            values.add(reader.read(in));
        }
        return List.copyOf(values);
    }
}
