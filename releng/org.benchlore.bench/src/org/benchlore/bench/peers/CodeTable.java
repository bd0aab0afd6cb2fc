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
import java.util.Map;

/** A plain SQLite table of codes with a B-tree over them, joined to the rows of a list of hits. */
public final class CodeTable implements AutoCloseable {

    private final Connection connection;
    private PreparedStatement select;

    /**
     * Makes an empty table.
     *
     * @param file where the database lies; it must not exist
     * @throws IOException if it cannot be written
     */
    public CodeTable(Path file) throws IOException {
        try {
            connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        } catch (SQLException e) {
            throw new IOException("SQLite cannot make a table", e);
        }
    }

    /**
     * Fills the table.
     *
     * @param titles title by row, the first row being 0
     * @param rows numbers of the rows that hold a code, by code
     * @throws IOException if it cannot be written
     */
    public void add(List<String> titles, Map<String, List<Integer>> rows) throws IOException {
        try (var sql = connection.createStatement()) {
            sql.execute("CREATE TABLE entry(id INTEGER PRIMARY KEY, title TEXT)");
            sql.execute("CREATE TABLE code(code TEXT, entry INTEGER)");
            connection.setAutoCommit(false);
            fill(titles, rows);
            sql.execute("CREATE INDEX by_code ON code(code, entry)");
            connection.commit();
            connection.setAutoCommit(true);
            select = connection.prepareStatement(
                    "SELECT e.id, e.title FROM code c JOIN entry e ON e.id = c.entry WHERE c.code = ? LIMIT ?");
        } catch (SQLException e) {
            throw new IOException("SQLite cannot write", e);
        }
    }

    private void fill(List<String> titles, Map<String, List<Integer>> rows) throws SQLException {
        try (var entry = connection.prepareStatement("INSERT INTO entry VALUES(?, ?)");
                var code = connection.prepareStatement("INSERT INTO code VALUES(?, ?)")) {
            for (int i = 0; i < titles.size(); i++) {
                entry.setInt(1, i);
                entry.setString(2, titles.get(i));
                entry.executeUpdate();
            }
            for (var one : rows.entrySet()) {
                code.setString(1, one.getKey());
                for (int row : one.getValue()) {
                    code.setInt(2, row);
                    code.executeUpdate();
                }
            }
        }
    }

    /**
     * Looks a code up.
     *
     * @param code the code
     * @param limit most rows
     * @return titles of the rows
     * @throws IOException if it cannot be read
     */
    public List<String> find(String code, int limit) throws IOException {
        try {
            select.setString(1, code);
            select.setInt(2, limit);
            var titles = new ArrayList<String>();
            try (var rows = select.executeQuery()) {
                while (rows.next()) {
                    rows.getInt(1);
                    titles.add(rows.getString(2));
                }
            }
            return titles;
        } catch (SQLException e) {
            throw new IOException("SQLite cannot look up " + code, e);
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
