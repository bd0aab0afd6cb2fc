// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.diagnose;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;

import org.benchlore.diagnose.Question;
import org.benchlore.edit.desk.Proposal;
import org.benchlore.edit.desk.Proposal.What;
import org.benchlore.model.Kind;
import org.benchlore.store.Catalogue;
import org.benchlore.store.Row;
import org.benchlore.ui.Ids;
import org.benchlore.ui.Keys;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The fields of a case: what it is about, what was noticed, the codes, and the work that did not cure it. */
final class CaseForm {

    private static final int WIDTH = 100;
    private static final int SYMPTOM_LINES = 3;
    private static final Pattern BETWEEN = Pattern.compile("[,;\\r\\n]+");

    private final Supplier<Optional<Catalogue>> catalogue;
    private final Runnable changed;
    private final ElementField about;
    private final Text symptoms;
    private final Text codes;
    private final ElementField after;
    private boolean isFilling;

    /** Makes it in a parent of two columns. */
    CaseForm(Composite parent, Supplier<Optional<Catalogue>> catalogue, Entry.Follow follow) {
        this.catalogue = catalogue;
        this.changed = follow.changed();
        about = new ElementField(parent, "diagnose.about", new Entry(Messages.about, Messages.aboutHint),
                Set.of(Kind.UNIT, Kind.MACHINE), catalogue, follow);
        symptoms = text(parent, "diagnose.symptoms", new Entry(Messages.symptoms, Messages.symptomsHint),
                SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SYMPTOM_LINES * symptoms.getLineHeight())
                .applyTo(symptoms);
        symptoms.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        codes = text(parent, "diagnose.codes", new Entry(Messages.codes, Messages.codesHint), SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(codes);
        after = new ElementField(parent, "diagnose.after", new Entry(Messages.after, Messages.afterHint),
                Set.of(Kind.PROCEDURE), catalogue, follow);
    }

    private Text text(Composite parent, String id, Entry entry, int style) {
        new Label(parent, SWT.NONE).setText(entry.label());
        var text = new Text(parent, style);
        text.setData(Ids.WIDGET_ID, id);
        text.setMessage(entry.hint());
        text.setToolTipText(entry.hint());
        Keys.name(text, entry.name());
        text.addModifyListener(event -> {
            if (!isFilling) {
                changed.run();
            }
        });
        return text;
    }

    boolean isBlank() {
        return about.words().isEmpty() && after.words().isEmpty() && symptoms.getText().isBlank()
                && codes.getText().isBlank();
    }

    /** Writes what is known of the place somebody stands at in place of all that stood here; a unit says more than its machine. */
    void fill(List<Proposal> place) {
        isFilling = true;
        about.set(row(place, What.UNIT).or(() -> row(place, What.MACHINE)));
        after.set(row(place, What.PROCEDURE));
        symptoms.setText(words(place, Set.of(What.SYMPTOM), "\n"));
        codes.setText(words(place, Set.of(What.CODE, What.CODE_AS_WRITTEN), ", "));
        isFilling = false;
    }

    private Optional<Row> row(List<Proposal> place, What what) {
        return place.stream().filter(one -> one.what() == what).flatMap(one -> one.target().stream()).findFirst()
                .flatMap(address -> catalogue.get().flatMap(all -> all.at(address)));
    }

    private String words(List<Proposal> place, Set<What> kinds, String between) {
        return String.join(between, place.stream().filter(one -> kinds.contains(one.what())).map(this::word).toList());
    }

    /** A code by itself: what it is called besides would be read as a second one. */
    private String word(Proposal one) {
        return one.target().flatMap(address -> catalogue.get().flatMap(all -> all.at(address)))
                .flatMap(row -> row.codes().stream().findFirst()).orElse(one.text());
    }

    Optional<Row> about() {
        return about.row();
    }

    /** What there is to write yet, or what is wrong, in one sentence; empty if it can be asked. */
    Optional<String> problem() {
        return problem(about).or(() -> problem(after)).or(this::missing);
    }

    private Optional<String> missing() {
        return about.words().isEmpty() ? Optional.of(Messages.what)
                : symptoms.getText().isBlank() && codes.getText().isBlank() && after.words().isEmpty()
                ? Optional.of(Messages.nothingAsked) : Optional.empty();
    }

    private static Optional<String> problem(ElementField field) {
        return field.words().isEmpty() || field.row().isPresent() ? Optional.empty()
                : Optional.of(NLS.bind(Messages.notMeant, field.words()));
    }

    /** The question as it stands here, if it names what it is about. */
    Optional<Question> question(List<Question.Reply> replies) {
        return problem().isPresent() ? Optional.empty() : about.row().map(row -> new Question(row.id(),
                pieces(symptoms), pieces(codes), after.row().map(Row::id), replies));
    }

    private static List<String> pieces(Text text) {
        return BETWEEN.splitAsStream(text.getText()).map(String::strip).filter(piece -> !piece.isEmpty()).toList();
    }

    /** Puts the words of the book in place of what was said, or below it where that was taken apart. */
    void say(String said, String meant) {
        var all = symptoms.getText();
        symptoms.setText(all.contains(said) ? all.replace(said, meant) : all.strip() + "\n" + meant);
        symptoms.setFocus();
    }

    void focus() {
        if (about.words().isEmpty()) {
            about.focus();
        } else {
            symptoms.setFocus();
        }
    }
}
