// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

import org.benchlore.store.Hash;

/**
 * Makes packs that mean harm, each out of a good one by one change, with a fixed seed. The zip is written by hand, since no
 * library writes names twice, links or lists that lie.
 */
final class HostilePacks {

    private static final String PART = "parts/pto-actuator.xmi";

    private final Map<String, byte[]> good;
    private final Random random = new Random(20261125);

    HostilePacks(Map<String, byte[]> good) {
        this.good = good;
    }

    /** A pack with what is wrong with it. */
    record Hostile(String what, byte[] zip) {
    }

    /** One entry as it is written, whether it is true or not. */
    private static final class Entry {
        private final String name;
        private final byte[] bytes;
        private int unixMode = 0x81a4;
        private int method = 8;
        private int flags = 0x800;
        private long size = -1;

        Entry(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }
    }

    List<Hostile> all(int count) throws IOException {
        var made = new ArrayList<Hostile>();
        for (int i = 0; made.size() < count; i++) {
            made.add(make(i));
        }
        return made;
    }

    private Hostile make(int i) throws IOException {
        return switch (i % 20) {
            case 0, 1 -> named("a way out of the folder", path(List.of("../", "a/../../", "parts/../../", "media/../../../", "..\\", "media\\..\\..\\")
                    .get(random.nextInt(6))));
            case 2 -> named("an absolute path", path(List.of("/", "/tmp/", "C:\\", "C:/", "//host/share/", "\\\\host\\").get(random.nextInt(6))));
            case 3 -> named("a place that is not for elements", List.of(".git/hooks/post-checkout", ".benchlore/taken.tsv", "notes/x.sh",
                    ".gitattributes", "media/.htaccess", "media/con.png", "media/a/b/c/d/e/f/g.png", "glossary.xmi", "parts/CON.xmi",
                    "parts/Pto.xmi", "media/a\u0000b.png", "media/a\u202eb.png").get(random.nextInt(12)));
            case 4 -> link();
            case 5 -> twice(false);
            case 6 -> twice(true);
            case 7 -> sum();
            case 8 -> size();
            case 9 -> bomb();
            case 10 -> lyingBomb();
            case 11 -> many();
            case 12, 13 -> xml(i);
            case 14 -> version();
            case 15 -> picture();
            case 16 -> cut();
            case 17 -> flipped();
            case 18 -> unnamed();
            default -> otherElement();
        };
    }

    private String path(String before) {
        return before + "stray-" + random.nextInt(1000) + ".xmi";
    }

    /** The list of contents names the bad file truly: only its place is wrong. */
    private Hostile named(String what, String name) throws IOException {
        var files = new LinkedHashMap<>(good);
        files.put(name, good.get(PART));
        return new Hostile(what + ": " + name, zip(entries(files)));
    }

    private Hostile link() throws IOException {
        var entries = entries(good);
        int at = random.nextInt(entries.size() - 1) + 1;
        entries.get(at).unixMode = List.of(0xa1ff, 0x61b0, 0x1180, 0x41ed).get(random.nextInt(4));
        return new Hostile("a link or a device", zip(entries));
    }

    private Hostile twice(boolean otherCase) throws IOException {
        var entries = entries(good);
        var one = entries.get(random.nextInt(entries.size() - 1) + 1);
        entries.add(new Entry(otherCase ? one.name.toUpperCase(java.util.Locale.ROOT).replace(".XMI", ".xmi") : one.name, one.bytes));
        return new Hostile("a name twice", zip(entries));
    }

    private Hostile sum() throws IOException {
        var entries = entries(good);
        int at = random.nextInt(entries.size() - 1) + 1;
        var changed = new String(entries.get(at).bytes, StandardCharsets.UTF_8) + "\n";
        entries.set(at, new Entry(entries.get(at).name, changed.getBytes(StandardCharsets.UTF_8)));
        return new Hostile("another sum", zip(entries));
    }

    private Hostile size() throws IOException {
        var entries = entries(good);
        entries.get(random.nextInt(entries.size())).size = 1L << 10 + random.nextInt(21);
        return new Hostile("another size", zip(entries));
    }

    private Hostile bomb() throws IOException {
        var files = new LinkedHashMap<>(good);
        var large = new byte[3_000_000 + random.nextInt(1000)];
        Arrays.fill(large, (byte) ' ');
        files.put("media/large-" + random.nextInt(1000) + ".svg", large);
        return new Hostile("a bomb", zip(entries(files)));
    }

    /** Says that it is small, and is not. */
    private Hostile lyingBomb() throws IOException {
        var files = new LinkedHashMap<>(good);
        files.put("media/small-" + random.nextInt(1000) + ".svg", new byte[27_000_000]);
        var entries = entries(files);
        entries.get(entries.size() - 1).size = 100;
        return new Hostile("a bomb that lies", zip(entries));
    }

    private Hostile many() throws IOException {
        var files = new LinkedHashMap<>(good);
        for (int i = 0; i < 51_000; i++) {
            files.put("media/m" + i + ".png", new byte[0]);
        }
        return new Hostile("too many files", zip(entries(files)));
    }

    private Hostile xml(int i) throws IOException {
        var text = new String(good.get(PART), StandardCharsets.UTF_8);
        var bad = List.of(text.replace("?>\n", "?>\n<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>\n"),
                text.replace("?>\n", "?>\n<!DOCTYPE x SYSTEM \"http://127.0.0.1:9/x.dtd\">\n"),
                text.replace("?>\n", "?>\n<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>\n"),
                text.replace("xmi:version", "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:schemaLocation=\"urn:x file:///x.ecore\" xmi:version"),
                text.replace("formatVersion=\"1\"", "formatVersion=\"9\""), text.replace("urn:benchlore:book:1", "urn:benchlore:book:9"),
                text.substring(0, text.length() / 2), "<a>".repeat(20_000), text.replace("title=", "colour=\"red\"\n    title=")).get(i / 2 % 9);
        var files = new LinkedHashMap<>(good);
        files.put(PART, bad.getBytes(StandardCharsets.UTF_8));
        return new Hostile("an element that must not be read: " + bad.substring(0, Math.min(60, bad.length())), zip(entries(files)));
    }

    private Hostile version() throws IOException {
        var entries = entries(good);
        var text = new String(entries.get(0).bytes, StandardCharsets.UTF_8);
        var other = List.of("benchlore-pack\t2", "benchlore-pack\t-1", "benchlore-pack", "other\t1", "", "benchlore-pack\t1\nstrange\tline")
                .get(random.nextInt(6));
        entries.set(0, new Entry(Manifest.NAME, text.replaceFirst("benchlore-pack\t1", other).getBytes(StandardCharsets.UTF_8)));
        return new Hostile("an unknown version: " + other, zip(entries));
    }

    private Hostile picture() throws IOException {
        var svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"" + List.of(" onload=\"alert(1)\"/>", "><script>alert(1)</script></svg>",
                "><image href=\"http://127.0.0.1:9/x.png\"/></svg>", "><foreignObject/></svg>").get(random.nextInt(4));
        var files = new LinkedHashMap<>(good);
        files.put("media/drawing-" + random.nextInt(100) + ".svg", svg.getBytes(StandardCharsets.UTF_8));
        return new Hostile("a picture that acts", zip(entries(files)));
    }

    private Hostile cut() throws IOException {
        var zip = zip(entries(good));
        return new Hostile("cut off", Arrays.copyOf(zip, random.nextInt(zip.length)));
    }

    private Hostile flipped() throws IOException {
        var zip = zip(entries(good));
        // Within the packed bytes of the first file: some places in a zip mean nothing and may be anything.
        for (int i = 0; i < 20; i++) {
            zip[60 + random.nextInt(400)] ^= (byte) (1 + random.nextInt(255));
        }
        return new Hostile("bytes changed", zip);
    }

    private Hostile unnamed() throws IOException {
        var entries = entries(good);
        if (random.nextBoolean()) {
            entries.add(new Entry("parts/extra-" + random.nextInt(100) + ".xmi", good.get(PART)));
        } else {
            entries.remove(entries.size() - 1);
        }
        return new Hostile("more or less than its list", zip(entries));
    }

    private Hostile otherElement() throws IOException {
        var files = new LinkedHashMap<>(good);
        files.put("parts/other-" + random.nextInt(100) + ".xmi", good.get(PART));
        return new Hostile("another element than the name says", zip(entries(files)));
    }

    private static List<Entry> entries(Map<String, byte[]> files) {
        var lines = new StringBuilder("benchlore-pack\t1\ntitle\tPack\nshop\tShop\nmade\t2026-11-25\ninvented\ttrue\n");
        files.forEach((name, bytes) -> lines.append("file\t").append(Hash.of(bytes)).append('\t').append(bytes.length).append('\t')
                .append(name).append('\n'));
        var entries = new ArrayList<Entry>();
        entries.add(new Entry(Manifest.NAME, lines.toString().getBytes(StandardCharsets.UTF_8)));
        files.forEach((name, bytes) -> entries.add(new Entry(name, bytes)));
        return entries;
    }

    private static byte[] zip(List<Entry> entries) throws IOException {
        var out = new ByteArrayOutputStream();
        var list = new ByteArrayOutputStream();
        for (var entry : entries) {
            int at = out.size();
            var packed = deflate(entry.bytes);
            out.write(head(entry, packed, 0x04034b50, 30, -1));
            out.write(name(entry));
            out.write(packed);
            list.write(head(entry, packed, 0x02014b50, 46, at));
            list.write(name(entry));
        }
        int start = out.size();
        out.write(list.toByteArray());
        out.write(ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN).putInt(0x06054b50).putInt(0).putShort((short) entries.size())
                .putShort((short) entries.size()).putInt(list.size()).putInt(start).array());
        return out.toByteArray();
    }

    private static byte[] name(Entry entry) {
        return entry.name.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] head(Entry entry, byte[] packed, int mark, int size, int offset) {
        var sum = new CRC32();
        sum.update(entry.bytes);
        var head = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN).putInt(mark);
        if (offset >= 0) {
            head.putShort((short) (3 << 8 | 20));
        }
        head.putShort((short) 20).putShort((short) entry.flags).putShort((short) entry.method).putInt(0x5c210000).putInt((int) sum.getValue())
                .putInt(packed.length).putInt((int) (entry.size < 0 ? entry.bytes.length : entry.size))
                .putShort((short) name(entry).length).putShort((short) 0);
        if (offset >= 0) {
            head.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(entry.unixMode << 16).putInt(offset);
        }
        return head.array();
    }

    private static byte[] deflate(byte[] bytes) {
        var deflater = new Deflater(Deflater.BEST_SPEED, true);
        deflater.setInput(bytes);
        deflater.finish();
        var out = new ByteArrayOutputStream();
        var buffer = new byte[8192];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }

    /** The good pack itself, written by the same hand. */
    byte[] harmless() throws IOException {
        return zip(entries(good));
    }
}
