// SPDX-License-Identifier: EPL-2.0
package org.benchlore.bench.peers;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.benchlore.bench.TextEntry;
import org.benchlore.bench.metrics.Ranked;

/** SQLite's full-text table, ordered by its bm25(); write-ahead log, no flush of the disk on a change. */
public final class Fts5 implements AutoCloseable {

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}\\p{M}]+");

    private final Connection connection;
    private final PreparedStatement select;
    private final PreparedStatement update;

    /**
     * Opens a table, making it where there is none.
     *
     * @param tokenizer a tokenizer of FTS5, such as {@code porter unicode61}
     * @param file where the database lies
     * @throws IOException if it cannot be written
     */
    public Fts5(String tokenizer, Path file) throws IOException {
        try {
            connection = DriverManager.getConnection("jdbc:sqlite:" + file);
            run("PRAGMA journal_mode = WAL");
            run("PRAGMA synchronous = NORMAL");
            run("CREATE VIRTUAL TABLE IF NOT EXISTS entry USING fts5(id UNINDEXED, text, tokenize = '" + tokenizer + "')");
            select = connection.prepareStatement(
                    "SELECT id, text, rank FROM entry WHERE entry MATCH ? ORDER BY rank LIMIT ?");
            update = connection.prepareStatement("UPDATE entry SET text = ? WHERE rowid = ?");
        } catch (SQLException e) {
            throw new IOException("SQLite cannot make a full-text table", e);
        }
    }

    private void run(String statement) throws SQLException {
        try (var sql = connection.createStatement()) {
            sql.execute(statement);
        }
    }

    /**
     * Adds entries in one transaction; the first gets row 1.
     *
     * @param entries the entries
     * @throws IOException if they cannot be written
     */
    public void add(List<TextEntry> entries) throws IOException {
        try (var insert = connection.prepareStatement("INSERT INTO entry(id, text) VALUES(?, ?)")) {
            connection.setAutoCommit(false);
            for (var entry : entries) {
                insert.setString(1, entry.id());
                insert.setString(2, entry.whole());
                insert.executeUpdate();
            }
            connection.commit();
            connection.setAutoCommit(true);
        } catch (SQLException e) {
            throw new IOException("SQLite cannot write", e);
        }
    }

    /**
     * Writes a row anew.
     *
     * @param row its number, from 1
     * @param text its new text
     * @throws IOException if it cannot be written
     */
    public void update(int row, String text) throws IOException {
        try {
            update.setString(1, text);
            update.setInt(2, row);
            update.executeUpdate();
        } catch (SQLException e) {
            throw new IOException("SQLite cannot write", e);
        }
    }

    /**
     * Writes a query for any of the words of a text.
     *
     * @param text words
     * @return words in quotes with OR between; empty where there is no word
     */
    public static String anyOf(String text) {
        return WORD.matcher(text).results().map(word -> quoted(word.group())).collect(Collectors.joining(" OR "));
    }

    /**
     * Quotes words, so that nothing in them is an operator; several words become a phrase.
     *
     * @param words words
     * @return a phrase
     */
    public static String quoted(String words) {
        return '"' + words.replace("\"", "\"\"") + '"';
    }

    /**
     * Searches and reads the text of every hit.
     *
     * @param query a query in the table's own language; an empty one finds nothing
     * @param limit most hits
     * @return the hits, best first
     * @throws IOException if it cannot be read
     */
    public List<Ranked> search(String query, int limit) throws IOException {
        var found = new ArrayList<Ranked>();
        if (query.isEmpty()) {
            return found;
        }
        try {
            select.setString(1, query);
            select.setInt(2, limit);
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    rows.getString(2);
                    found.add(new Ranked(rows.getString(1), -rows.getDouble(3)));
                }
            }
            return found;
        } catch (SQLException e) {
            throw new IOException("SQLite cannot search for " + query, e);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            connection.close();
        } catch (SQLException e) {
            throw new IOException("SQLite cannot close", e);
        }
    }
}
