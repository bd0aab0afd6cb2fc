// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.benchlore.model.Address;
import org.benchlore.model.Element;
import org.benchlore.model.FaultCode;
import org.benchlore.model.Kind;
import org.benchlore.model.Need;
import org.benchlore.model.Person;
import org.benchlore.model.Source;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.model.Work;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Turns references into links. A reference that leads to nothing is shown as its id and says so. People, and what
 * stands on the page itself, are shown as words, since there is nowhere to go.
 */
final class Links {

    private final Library library;
    private final TopElement own;

    Links(Library library, TopElement own) {
        this.library = library;
        this.own = own;
    }

    /** Follows a reference, empty for null, for what is missing and for what is of another type. */
    <T extends EObject> Optional<T> follow(T reference, Class<T> type) {
        return library.resolve(reference).filter(type::isInstance).map(type::cast);
    }

    /** Returns where an element stands, also for a copy that lies in no file. */
    Optional<Address> address(EObject element) {
        return library.addressOf(element).or(() -> addressOfCopy(element));
    }

    private static Optional<Address> addressOfCopy(EObject element) {
        if (!element.eIsProxy() && element instanceof Element it && it.getId() != null
                && EcoreUtil.getRootContainer(element) instanceof TopElement top && top.getId() != null) {
            try {
                return Kind.of(top.eClass()).map(kind -> new Address(kind.path(top.getId()), it.getId()));
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    List<Span> to(EObject reference) {
        return reference == null ? List.of() : List.of(span(reference));
    }

    List<List<Span>> each(Collection<? extends EObject> references) {
        return references.stream().map(this::to).toList();
    }

    List<Span> joined(Collection<? extends EObject> references) {
        return Spans.join(", ", each(references));
    }

    Span to(Row row) {
        return new Span.Link(Names.of(row), row.address());
    }

    private Span span(EObject reference) {
        var row = library.addressOf(reference).flatMap(this::topRow);
        if (row.isPresent() && reference != own) {
            return to(row.get());
        }
        return library.resolve(reference).map(this::found).orElseGet(() -> missing(reference));
    }

    /** Most references lead to a whole file, whose title the catalogue knows without loading it. */
    private Optional<Row> topRow(Address address) {
        return library.catalogue().at(address)
                .filter(row -> row.id().equals(address.id()) && row.kind() != Kind.CODE);
    }

    private Span found(EObject element) {
        var name = Names.of(element);
        if (element instanceof Person || EcoreUtil.getRootContainer(element) == own) {
            return Span.of(name);
        }
        return address(element).<Span>map(address -> new Span.Link(name, address)).orElseGet(() -> Span.of(name));
    }

    private Span missing(EObject reference) {
        var address = library.addressOf(reference);
        var id = address.map(Address::id).orElseGet(() -> strayId(reference));
        var unreadable = address.flatMap(it -> library.catalogue().entry(it.path()))
                .filter(entry -> entry.row().isEmpty()).isPresent();
        return Span.of(id + (unreadable ? Texts.FILE_UNREADABLE : Texts.NOT_IN_LIBRARY));
    }

    private static String strayId(EObject reference) {
        var uri = ((InternalEObject) reference).eProxyURI();
        return uri == null ? "?" : uri.fragment() == null ? uri.toString() : uri.fragment();
    }

    /** Writes needs, of which each must hold and any one access fulfils it: 'a or b; and c'. */
    List<Span> needs(Collection<Need> needs) {
        return Spans.join("; and ", needs.stream().map(need -> Spans.join(" or ", each(need.getAnyOf()))).toList());
    }

    /** Links fault codes by canonical form and meaning, and adds those that the library does not hold. */
    List<List<Span>> codes(Collection<FaultCode> codes, Collection<String> asWritten) {
        var written = asWritten.stream().map(code -> Spans.of("as written: ", code));
        return Stream.concat(each(codes).stream(), written).toList();
    }

    /** Names a step from another place: 'step 7', and where it stands if that is not the same work. */
    List<Span> step(Step reference, EObject from) {
        return library.resolve(reference).filter(Step.class::isInstance).map(Step.class::cast)
                .map(step -> stepName(step, from)).orElseGet(() -> to(reference));
    }

    private List<Span> stepName(Step step, EObject from) {
        var number = Spans.of("step " + Names.number(step));
        if (step.eContainer() == workOf(from)) {
            return number;
        }
        if (EcoreUtil.getRootContainer(step) == own) {
            return Spans.concat(number, Spans.of(" of ", Names.of(step.eContainer())));
        }
        return Spans.concat(number, Spans.before(" of ", to(EcoreUtil.getRootContainer(step))));
    }

    private static EObject workOf(EObject from) {
        var object = from;
        while (object != null && !(object instanceof Work)) {
            object = object.eContainer();
        }
        return object;
    }

    /** Names the document that a figure or a procedure stands on, with its edition and the section. */
    List<Span> cited(Source source) {
        return source == null ? List.of() : Spans.join(", ", List.of(to(source.getDocument()),
                Spans.of("edition ", source.getEdition()), Spans.of(source.getSection())));
    }

    /** Turns a text's {@code {kind:id}} into links. */
    List<Span> text(String text, EObject from) {
        return text == null || text.isBlank() ? List.of() : new TextLinks(library, own, this).of(text, from);
    }

    String plain(String text, EObject from) {
        return Spans.text(text(text, from));
    }
}
