// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Machine;
import org.benchlore.store.Library;
import org.benchlore.store.LoadedFile;
import org.benchlore.store.Row;

/**
 * Chooses what goes into a pack: the procedures that are wanted, everything that they stand on, and what the shop knows
 * about them. What is spoken of and does not come along is named.
 */
public final class Selector {

    /** What always comes along with whatever names it: the entry only, and nothing of it is private. */
    private static final Set<Kind> ALWAYS = Set.of(Kind.PART, Kind.TOOL, Kind.SUPPLY, Kind.CODE, Kind.DOCUMENT);

    private final Library library;
    private final PackRequest request;
    private final Standing standing;
    private final SortedMap<String, Row> taken = new TreeMap<>();
    private final Set<Address> people = new TreeSet<>();
    private final Set<String> refused = new TreeSet<>();
    private final Set<Address> machines = new HashSet<>();
    private final Deque<Row> open = new ArrayDeque<>();

    private Selector(Library library, PackRequest request) {
        this.library = library;
        this.request = request;
        this.standing = new Standing(request);
    }

    /**
     * Chooses.
     *
     * @param library the library
     * @param request what is wanted
     * @return what goes in and what does not
     * @throws PackException if an id is unknown or nothing is left to pack
     */
    public static Selection of(Library library, PackRequest request) throws PackException {
        return new Selector(library, request).select();
    }

    private Selection select() throws PackException {
        var wanted = new Wanted(library, request).rows();
        // What is only needed on the way, such as reading codes, may be for many machines: only those of the wanted come along.
        wanted.forEach(row -> machines.addAll(row.machines()));
        wanted.forEach(this::take);
        follow();
        if (taken.values().stream().noneMatch(row -> row.kind() == Kind.PROCEDURE)) {
            var why = wanted.stream().map(row -> "'" + row.id() + "' " + reason(row)).limit(3).collect(Collectors.joining(", "));
            throw new PackException(wanted.isEmpty() ? "There is no procedure of that choice: choose others."
                    : "Nothing is left to pack: " + why + ".");
        }
        about();
        follow();
        var left = new LeftBehind(library, request, taken.keySet(), people, this::reason);
        return new Selection(request, new PackName(library, request).of(wanted.stream().filter(row -> taken.containsKey(row.path())).toList()), taken, people, left.list(taken.values(), refused));
    }

    private String reason(Row row) {
        return standing.refuses(row).or(() -> isWhole(row) ? java.util.Optional.empty()
                : java.util.Optional.of("cannot be read whole")).orElse("was not chosen");
    }

    private boolean isWhole(Row row) {
        return library.file(row.path()).filter(LoadedFile::isWhole).isPresent();
    }

    private void take(Row row) {
        if (taken.containsKey(row.path())) {
            return;
        }
        if (standing.refuses(row).isPresent() || !isWhole(row)) {
            refused.add(row.path());
        } else {
            taken.put(row.path(), row);
            open.add(row);
        }
    }

    private void follow() {
        while (!open.isEmpty()) {
            var row = open.remove();
            var strong = row.kind() == Kind.MACHINE ? afterClosing(row) : Set.<Address>of();
            for (var target : row.references()) {
                if (target.path().equals(Kind.SHOP.path(Kind.SHOP.word()))) {
                    person(target);
                } else {
                    library.catalogue().at(target).filter(found -> comesWith(row, found, strong)).ifPresent(this::take);
                }
            }
        }
    }

    private void person(Address target) {
        if (request.has(Extra.NAMES) && library.element(target).filter(org.benchlore.model.Person.class::isInstance).isPresent()) {
            people.add(target);
        }
    }

    private boolean comesWith(Row from, Row to, Set<Address> strong) {
        return ALWAYS.contains(to.kind()) || switch (to.kind()) {
            case PROCEDURE -> from.kind() == Kind.PROCEDURE || strong.contains(to.address());
            case MACHINE -> from.kind() == Kind.PROCEDURE && machines.contains(to.address()) || from.kind() == Kind.UNIT;
            case NOTE -> from.kind() == Kind.PROCEDURE;
            case UNIT, JOB -> from.kind() == Kind.NOTE || from.kind() == Kind.JOB;
            default -> false;
        };
    }

    /** What must follow when an access of a machine is closed belongs to the work; what only checks a cause does not. */
    private Set<Address> afterClosing(Row machine) {
        var found = new HashSet<Address>();
        library.top(machine.id()).filter(Machine.class::isInstance).map(Machine.class::cast).ifPresent(top -> top.getAccesses()
                .forEach(access -> access.getAfterClosing().forEach(next -> library.addressOf(next).ifPresent(found::add))));
        return found;
    }

    /** What the shop knows about what is packed: notes, documents, and jobs where they are wanted. */
    private void about() {
        var procedures = taken.values().stream().filter(row -> row.kind() == Kind.PROCEDURE).toList();
        var components = procedures.stream().flatMap(row -> row.components().stream()).collect(Collectors.toSet());
        var paths = procedures.stream().map(Row::path).collect(Collectors.toSet());
        var whole = request.isWhole() ? taken.keySet() : request.machines().stream().map(Kind.MACHINE::path).collect(Collectors.toSet());
        library.catalogue().rows().filter(row -> standing.isAbout(row) && (row.components().stream().anyMatch(components::contains)
                || row.references().stream().anyMatch(to -> paths.contains(to.path()))
                || row.machines().stream().anyMatch(to -> whole.contains(to.path())))).toList().forEach(row -> {
                    if (standing.refuses(row).isEmpty() || row.kind() == Kind.NOTE) {
                        take(row);
                    }
                });
    }
}
