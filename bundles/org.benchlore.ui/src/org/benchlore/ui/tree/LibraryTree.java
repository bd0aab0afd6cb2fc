// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.model.Kind;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.Systems;
import org.benchlore.ui.look.Words;

/** Builds the tree of a library from its facts; loads nothing but the machines, for the names of their systems. */
final class LibraryTree {

    private static final Comparator<Row> BY_TITLE = Comparator.comparing(Row::title, String.CASE_INSENSITIVE_ORDER)
            .thenComparing(Row::path);

    private final Library library;
    private final List<Row> rows;

    LibraryTree(Library library) {
        this.library = library;
        this.rows = library.catalogue().rows().sorted(BY_TITLE).toList();
    }

    /**
     * Builds the tree.
     *
     * @return its top nodes: machines, what names no machine, everything by kind
     */
    List<TreeNode> build() {
        var roots = new ArrayList<TreeNode>();
        rows.stream().filter(row -> row.kind() == Kind.MACHINE).map(this::machine).forEach(roots::add);
        var general = byKind("general", rows.stream().filter(row -> row.machines().isEmpty() && row.kind() != Kind.MACHINE));
        if (!general.isEmpty()) {
            roots.add(TreeNode.branch("general", Messages.allMachines, "branch", general));
        }
        if (!rows.isEmpty()) {
            roots.add(TreeNode.branch("kinds", Messages.everythingByKind, "branch", byKind("kinds", rows.stream())));
        }
        return roots;
    }

    private TreeNode machine(Row machine) {
        var systems = Systems.of(library, machine);
        var placed = new TreeMap<String, List<Row>>();
        var whole = new ArrayList<Row>();
        rows.stream().filter(isFor(machine)).forEach(row -> {
            var names = systems.of(row);
            names.forEach(name -> placed.computeIfAbsent(name, none -> new ArrayList<>()).add(row));
            if (names.isEmpty()) {
                whole.add(row);
            }
        });
        var children = new ArrayList<TreeNode>();
        systems.names().filter(placed::containsKey).forEach(name -> children.add(TreeNode.branch(name, name, "system",
                byKind(machine.id() + "/" + name, placed.get(name).stream()))));
        children.addAll(byKind(machine.id(), whole.stream()));
        return element(machine.id(), machine).with(children);
    }

    private static Predicate<Row> isFor(Row machine) {
        return row -> row.kind() != Kind.MACHINE
                && row.machines().stream().anyMatch(address -> address.path().equals(machine.path()));
    }

    private static List<TreeNode> byKind(String key, Stream<Row> rows) {
        Map<Kind, List<Row>> kinds = rows.collect(Collectors.groupingBy(Row::kind, () -> new EnumMap<>(Kind.class),
                Collectors.toList()));
        var branches = new LinkedHashMap<String, TreeNode>();
        kinds.forEach((kind, some) -> branches.put(kind.word(),
                kind.isSingle() ? element(key, some.get(0)) : TreeNode.branch(key + "/" + kind.word(), Words.many(kind),
                        icon(kind), some.stream().map(row -> element(key, row)).toList())));
        return List.copyOf(branches.values());
    }

    private static TreeNode element(String key, Row row) {
        var words = (row.id() + " " + String.join(" ", row.codes()) + " " + String.join(" ", row.numbers()))
                .toLowerCase(Locale.ROOT);
        return new TreeNode(key + "#" + row.path(), row.title(), Words.state(row.status()), icon(row.kind()),
                Optional.of(row.address()), words, List.of());
    }

    private static String icon(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
