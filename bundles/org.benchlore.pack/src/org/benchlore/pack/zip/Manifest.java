// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.zip;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.benchlore.pack.Extra;
import org.benchlore.pack.LeftOut;
import org.benchlore.pack.PackException;

/**
 * The list of contents of a library pack: lines of words with tabs between them, UTF-8, in a fixed order.
 *
 * @param title what people call the pack
 * @param shop the shop that made it
 * @param made the day it was made
 * @param invented whether it holds invented data
 * @param extras what came along though it stays out otherwise
 * @param files every other file of the pack by path
 * @param leftOut what is spoken of and stayed out
 */
public record Manifest(String title, String shop, LocalDate made, boolean invented, Set<Extra> extras,
        SortedMap<String, Entry> files, List<LeftOut> leftOut) {

    /** Name of the list in the pack. */
    public static final String NAME = "manifest.txt";

    /** The version of the form that this program writes and reads. */
    public static final int VERSION = 1;

    private static final String HEAD = "benchlore-pack";
    private static final int LONGEST_LINE = 4000;

    /**
     * A file of a pack.
     *
     * @param sum SHA-256 of its bytes, lower-case hexadecimal
     * @param size its bytes
     */
    public record Entry(String sum, long size) {
    }

    /**
     * Writes the list.
     *
     * @return its bytes, the same for the same contents
     */
    public byte[] bytes() {
        var text = new StringBuilder(HEAD + "\t" + VERSION + "\n");
        line(text, "title", title);
        line(text, "shop", shop);
        line(text, "made", made.toString());
        line(text, "invented", String.valueOf(invented));
        extras.stream().sorted().forEach(extra -> line(text, "with", extra.word()));
        files.forEach((path, entry) -> line(text, "file", entry.sum(), String.valueOf(entry.size()), path));
        leftOut.stream().sorted().forEach(left -> line(text, "left-out", left.what(), left.reason()));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void line(StringBuilder text, String... words) {
        for (int i = 0; i < words.length; i++) {
            var word = words[i].replaceAll("[\\t\\r\\n]+", " ");
            text.append(i == 0 ? "" : "\t").append(word.length() > LONGEST_LINE / 4 ? word.substring(0, LONGEST_LINE / 4) : word);
        }
        text.append('\n');
    }

    /**
     * Reads the list.
     *
     * @param bytes its bytes
     * @return the list
     * @throws PackException with a plain sentence if it is none that this program knows
     */
    public static Manifest read(byte[] bytes) throws PackException {
        var lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
        var head = lines[0].split("\t", -1);
        if (head.length != 2 || !head[0].equals(HEAD)) {
            throw damaged("does not begin with '" + HEAD + "'");
        }
        if (!head[1].equals(String.valueOf(VERSION))) {
            throw new PackException("The pack has format version " + plain(head[1]) + ", this program knows version " + VERSION
                    + ": use a newer program.");
        }
        var reader = new Reader();
        for (int i = 1; i < lines.length; i++) {
            if (!lines[i].isEmpty()) {
                reader.line(lines[i]);
            }
        }
        return reader.manifest();
    }

    private static PackException damaged(String how) {
        return new PackException("The pack's " + NAME + " " + how + ": have the pack made again.");
    }

    /** What a pack says is shown only without signs that could move the cursor. */
    static String plain(String text) {
        var shown = text.replaceAll("[\\p{Cntrl}\\p{Cf}]", "?");
        return shown.length() > 120 ? shown.substring(0, 120) + "…" : shown;
    }

    private static final class Reader {

        private String title = "";
        private String shop = "";
        private LocalDate made;
        private boolean invented;
        private final Set<Extra> extras = EnumSet.noneOf(Extra.class);
        private final SortedMap<String, Entry> files = new TreeMap<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        void line(String line) throws PackException {
            if (line.length() > LONGEST_LINE) {
                throw damaged("has a line that is too long");
            }
            var words = line.split("\t", -1);
            switch (words[0] + "/" + words.length) {
                case "title/2" -> title = plain(words[1]);
                case "shop/2" -> shop = plain(words[1]);
                case "made/2" -> made = day(words[1]);
                case "invented/2" -> invented = words[1].equals("true");
                case "with/2" -> extras.add(Extra.of(words[1]).orElseThrow(() -> damaged("speaks of '" + plain(words[1])
                        + "', which this program does not know")));
                case "file/4" -> file(words);
                case "left-out/3" -> leftOut.add(new LeftOut(plain(words[1]), plain(words[2])));
                default -> throw damaged("has a line '" + plain(line) + "' that this program does not know");
            }
        }

        private static LocalDate day(String text) throws PackException {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException e) {
                throw damaged("has no day when it was made");
            }
        }

        private void file(String[] words) throws PackException {
            if (!words[1].matches("[0-9a-f]{64}") || !words[2].matches("[0-9]{1,12}")) {
                throw damaged("has no sum or no size for '" + plain(words[3]) + "'");
            }
            if (files.put(words[3], new Entry(words[1], Long.parseLong(words[2]))) != null) {
                throw damaged("names '" + plain(words[3]) + "' twice");
            }
        }

        Manifest manifest() throws PackException {
            if (made == null || files.isEmpty()) {
                throw damaged("is not whole");
            }
            return new Manifest(title, shop, made, invented, extras, Collections.unmodifiableSortedMap(files), List.copyOf(leftOut));
        }
    }
}
