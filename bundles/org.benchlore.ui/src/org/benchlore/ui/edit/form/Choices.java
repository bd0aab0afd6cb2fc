// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.benchlore.edit.Sessions;
import org.benchlore.model.Address;
import org.benchlore.model.Element;
import org.benchlore.model.Kind;
import org.benchlore.model.Titled;
import org.benchlore.model.TopElement;
import org.benchlore.model.compare.Words;
import org.benchlore.store.ElementTitle;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/**
 * Finds the elements that a reference can lead to: whole files by the catalogue, parts of files by looking into them.
 */
final class Choices {

    private static final List<Kind> WITH_PARTS = List.of(Kind.MACHINE, Kind.SHOP);
    private static final int NO_MATCH = 3;
    private static final List<Kind> NAMED_IN_TEXTS = Arrays.stream(Kind.values())
            .filter(kind -> !kind.isSingle() && kind != Kind.JOB).toList();

    private final Library library;
    private final Sessions sessions;
    private final TopElement own;
    private final Words words = new Words();
    private final Map<EClass, Map<String, List<Choice>>> others = new HashMap<>();

    Choices(Sessions sessions, TopElement own) {
        this.library = sessions.library();
        this.sessions = sessions;
        this.own = own;
    }

    /** Forgets what stood in other files. */
    void forget() {
        others.clear();
    }

    /**
     * Elements of a type whose title, id, number or code, in any spelling, fits what was typed, the likeliest first.
     */
    List<Choice> find(EClass type, String typed, int limit) {
        return ranked(all(type), typed, limit);
    }

    private List<Choice> ranked(Stream<Choice> all, String typed, int limit) {
        var wanted = typed.strip().toLowerCase(Locale.ROOT);
        var pieces = Arrays.stream(wanted.split("\\s+")).filter(piece -> !piece.isEmpty()).toList();
        record Ranked(Choice choice, int rank) {
        }
        var near = NearMachines.of(own, library);
        return all.map(choice -> new Ranked(choice, rank(choice, wanted, pieces)))
                .filter(ranked -> ranked.rank() < NO_MATCH)
                .sorted(Comparator.<Ranked>comparingInt(ranked -> Math.min(1, ranked.rank()))
                        .thenComparing(ranked -> !near.contains(ranked.choice().address().path()))
                        .thenComparingInt(Ranked::rank)
                        .thenComparing(ranked -> ranked.choice().title(), String.CASE_INSENSITIVE_ORDER))
                .limit(limit).map(Ranked::choice).toList();
    }

    /** Whole elements of any kind, as they can be named within a text. */
    List<Choice> findNamed(String typed, int limit) {
        var types = NAMED_IN_TEXTS.stream().map(Kind::type).toList();
        return ranked(types.stream().flatMap(this::all), typed, limit);
    }

    /** The word of an element's kind, as it stands in texts. */
    String kind(Address address) {
        return library.catalogue().at(address).map(row -> row.kind().word()).orElse("");
    }

    private static int rank(Choice choice, String wanted, List<String> pieces) {
        var title = choice.title().toLowerCase(Locale.ROOT);
        if (choice.isNamed(wanted)) {
            return 0;
        }
        var line = " " + title + " " + choice.address().id() + " " + choice.detail().toLowerCase(Locale.ROOT);
        return title.startsWith(wanted) ? 1 : pieces.stream().allMatch(line::contains)
                || NumberSpelling.of(wanted).isWithin(choice.numbers()) ? 2 : NO_MATCH;
    }

    private Stream<Choice> all(EClass type) {
        var kind = Kind.of(type);
        if (kind.isPresent()) {
            return library.catalogue().rows(kind.get()).filter(row -> !row.path().equals(ownPath()))
                    .map(Choices::whole);
        }
        return Stream.concat(parts(own, ownPath(), type), NearMachines.isWithin(own, type) ? Stream.empty()
                : inOthers(type));
    }

    /** What people ask for by number or code is shown with it. */
    private static Choice whole(Row row) {
        var numbers = new ArrayList<>(row.numbers());
        if (row.kind() == Kind.CODE) {
            numbers.addAll(row.codes());
        }
        var shown = numbers.stream().filter(number -> !row.title().contains(number)).findFirst().orElse(row.id());
        return new Choice(row.address(), row.title(), shown, numbers);
    }

    /** What is being edited is looked into anew each time; what lies in the library is kept. */
    private Stream<Choice> inOthers(EClass type) {
        var closed = others.computeIfAbsent(type, wanted -> paths().filter(path -> sessions.find(path).isEmpty())
                .collect(Collectors.toMap(path -> path, path -> inOther(path, wanted))));
        return paths().flatMap(path -> (sessions.find(path).isPresent() ? inOther(path, type)
                : closed.computeIfAbsent(path, later -> inOther(later, type))).stream());
    }

    private Stream<String> paths() {
        return WITH_PARTS.stream().flatMap(library.catalogue()::rows).map(Row::path)
                .filter(path -> !path.equals(ownPath()));
    }

    private List<Choice> inOther(String path, EClass type) {
        return sessions.current(path).map(root -> parts(root, path, type).toList()).orElse(List.of());
    }

    private Stream<Choice> parts(TopElement root, String path, EClass type) {
        var found = new ArrayList<Choice>();
        root.eAllContents().forEachRemaining(object -> {
            if (type.isInstance(object) && object instanceof Element element && element.getId() != null) {
                found.add(new Choice(new Address(path, element.getId()), title(object), within(object, root),
                        List.of()));
            }
        });
        return found.stream();
    }

    private String within(EObject object, TopElement root) {
        var place = object.eContainer() == root ? "" : title(object.eContainer());
        var top = root == own ? "" : ElementTitle.of(root);
        return place.isEmpty() ? top : top.isEmpty() ? place : place + ", " + top;
    }

    private String ownPath() {
        return Kind.of(own.eClass()).orElseThrow().path(own.getId());
    }

    /** What an element that a reference leads to is called; its id where it is not there. */
    String title(Address address) {
        if (address.path().equals(ownPath())) {
            return own(address).map(this::title).orElse(address.id());
        }
        return library.catalogue().at(address).filter(row -> row.id().equals(address.id())).map(row -> row.title())
                .or(() -> sessions.current(address.path()).map(root -> root.eResource().getEObject(address.id()))
                        .map(this::title)).orElse(address.id());
    }

    /** An element of the file that is being edited. */
    Optional<EObject> own(Address address) {
        return address.path().equals(ownPath()) ? Optional.ofNullable(own.eResource())
                .map(resource -> resource.getEObject(address.id())) : Optional.empty();
    }

    String title(EObject object) {
        if (object instanceof TopElement top) {
            return ElementTitle.of(top);
        }
        return object instanceof Titled titled && titled.getTitle() != null ? titled.getTitle() : words.label(object);
    }
}
