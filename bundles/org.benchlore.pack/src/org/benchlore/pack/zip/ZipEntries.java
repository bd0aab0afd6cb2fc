// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

import org.benchlore.pack.PackException;

/**
 * Reads the list at the end of a zip file as it is written there, with what the Java library does not show: links, twice
 * the same name, encryption. Source of the layout: the ZIP file format specification (APPNOTE 6.3), 4.3.12 and 4.3.16; from
 * memory.
 */
final class ZipEntries {

    private static final int END_SIZE = 22;
    private static final int LONGEST_REMARK = 0xffff;
    private static final int END = 0x06054b50;
    private static final int ENTRY = 0x02014b50;
    private static final int ENTRY_SIZE = 46;
    private static final int TYPE = 0xf000;
    private static final int REGULAR = 0x8000;
    private static final int UNIX = 3;
    private static final long LARGEST_LIST = 64L << 20;

    private final ByteBuffer list;
    private final int count;

    private ZipEntries(ByteBuffer list, int count) {
        this.list = list;
        this.count = count;
    }

    /**
     * An entry as the list has it.
     *
     * @param name its name
     * @param packed bytes in the zip
     * @param size bytes when unpacked, as the list says
     * @param isRegular whether it is a plain file: no folder, no link, no device
     * @param isReadable whether it is stored or deflated, and not encrypted
     */
    record Entry(String name, long packed, long size, boolean isRegular, boolean isReadable) {
    }

    static List<Entry> of(Path file) throws IOException, PackException {
        try (var channel = FileChannel.open(file, StandardOpenOption.READ)) {
            var tail = tail(channel);
            int end = end(tail);
            int count = tail.getShort(end + 10) & 0xffff;
            long size = tail.getInt(end + 12) & 0xffffffffL;
            long start = tail.getInt(end + 16) & 0xffffffffL;
            // What begins with something else before the first entry can be two files in one.
            if (count == 0xffff || size > LARGEST_LIST || start + size != channel.size() - (tail.limit() - end)) {
                throw noZip();
            }
            var list = ByteBuffer.allocate((int) size).order(ByteOrder.LITTLE_ENDIAN);
            channel.read(list, start);
            return new ZipEntries(list.flip(), count).read();
        } catch (IndexOutOfBoundsException e) {
            throw noZip();
        }
    }

    static PackException noZip() {
        return new PackException("This is no library pack: it is no whole zip file; have it sent or made again.");
    }

    private static ByteBuffer tail(FileChannel channel) throws IOException {
        long from = Math.max(0, channel.size() - END_SIZE - LONGEST_REMARK);
        var tail = ByteBuffer.allocate((int) (channel.size() - from)).order(ByteOrder.LITTLE_ENDIAN);
        channel.read(tail, from);
        return tail.flip();
    }

    private static int end(ByteBuffer tail) throws PackException {
        int at = tail.limit() - END_SIZE;
        // A remark behind the list could hold a second list.
        if (at < 0 || tail.getInt(at) != END) {
            throw noZip();
        }
        return at;
    }

    private List<Entry> read() throws PackException {
        var found = new ArrayList<Entry>();
        int at = 0;
        for (int i = 0; i < count; i++) {
            if (list.getInt(at) != ENTRY) {
                throw noZip();
            }
            int nameLength = list.getShort(at + 28) & 0xffff;
            found.add(entry(at, nameLength));
            at += ENTRY_SIZE + nameLength + (list.getShort(at + 30) & 0xffff) + (list.getShort(at + 32) & 0xffff);
        }
        if (at != list.limit()) {
            throw noZip();
        }
        return found;
    }

    private Entry entry(int at, int nameLength) throws PackException {
        int madeBy = list.get(at + 5) & 0xff;
        int flags = list.getShort(at + 8);
        int method = list.getShort(at + 10);
        int attributes = list.getInt(at + 38);
        int type = madeBy == UNIX ? attributes >>> 16 & TYPE : 0;
        var name = name(at + ENTRY_SIZE, nameLength);
        boolean isRegular = (type == 0 || type == REGULAR) && !name.endsWith("/") && (attributes & 0x10) == 0;
        return new Entry(name, list.getInt(at + 20) & 0xffffffffL, list.getInt(at + 24) & 0xffffffffL, isRegular,
                (method == 0 || method == 8) && (flags & 1) == 0);
    }

    private String name(int at, int length) throws PackException {
        try {
            return StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .decode(list.slice(at, length)).toString();
        } catch (CharacterCodingException e) {
            throw noZip();
        }
    }
}
