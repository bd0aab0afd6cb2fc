// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.model.Address;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Shop;
import org.benchlore.store.Catalogue;

/**
 * Rules that the shop has silenced, each at one element with a reason. One at a file's own element holds for the whole
 * file. One without a reason silences nothing.
 */
public final class Suppressions {

    private final Map<String, String> reasons = new HashMap<>();

    /** Reads the suppressions of a shop. */
    public Suppressions(Optional<Shop> shop) {
        shop.ifPresent(one -> one.getSuppressions().stream()
                .filter(suppression -> suppression.getReason() != null && !suppression.getReason().isBlank())
                .forEach(suppression -> reasons.put(key(suppression.getRule(), suppression.getAddress()),
                        suppression.getReason().strip())));
    }

    private static String key(String rule, String address) {
        return rule + " " + address;
    }

    /** Says why a problem is silenced, if it is. */
    public Optional<String> reason(Problem problem, Catalogue facts) {
        var exact = reasons.get(key(problem.rule(), problem.at().toString()));
        return exact != null ? Optional.of(exact) : facts.entry(problem.at().path()).flatMap(Catalogue.Entry::row)
                .map(row -> reasons.get(key(problem.rule(), row.address().toString())));
    }

    /** Parts problems into open and silenced ones, each in order. */
    Report report(List<Problem> problems, Catalogue facts, int files) {
        var open = new ArrayList<Problem>();
        var silenced = new ArrayList<Silenced>();
        problems.stream().sorted().forEach(problem -> reason(problem, facts)
                .ifPresentOrElse(reason -> silenced.add(new Silenced(problem, reason)), () -> open.add(problem)));
        return new Report(List.copyOf(open), List.copyOf(silenced), files);
    }

    /**
     * Silences a problem.
     *
     * @param shop the session of the shop
     * @param problem the problem
     * @param reason why it may stay
     * @param by who decides
     * @param day the day
     * @return the edit of the shop
     * @throws IllegalArgumentException with a plain sentence if there is no reason, or the session is not the shop's
     */
    public static Edit silence(EditSession shop, Problem problem, String reason, Optional<Address> by, LocalDate day) {
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("A rule is silenced for a reason: write why this may stay as it is");
        }
        if (!(shop.element() instanceof Shop)) {
            throw new IllegalArgumentException(shop.title() + " is not the shop: what is silenced is kept there");
        }
        var edits = shop.edits();
        var adding = edits.inner().add(shop.element(), Literals.SHOP__SUPPRESSIONS, Literals.SUPPRESSION, InnerEdits.END);
        var one = adding.element();
        return Edits.all("silence a rule", List.of(adding.edit(), edits.text(one, Literals.SUPPRESSION__RULE, problem.rule()),
                edits.text(one, Literals.SUPPRESSION__ADDRESS, problem.at().toString()),
                edits.text(one, Literals.SUPPRESSION__REASON, reason),
                edits.reference(one, Literals.SUPPRESSION__BY, by), edits.value(one, Literals.SUPPRESSION__ON, day)));
    }
}
