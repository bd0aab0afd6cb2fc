// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.References;
import org.benchlore.measure.Amount;
import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.JobRecord;
import org.benchlore.model.Offer;
import org.benchlore.model.Procedure;

/** Writes into a job what was offered to the customer. What was answered already stays as it is. */
public final class Offers {

    /**
     * Something that is offered.
     *
     * @param procedure the work, where it is written as one
     * @param text the work in words, where it is not
     * @param price price without tax
     * @param isDeclined whether the customer has declined it
     */
    public record Line(Optional<Address> procedure, String text, Amount price, boolean isDeclined) {
    }

    private Offers() {
    }

    /**
     * Makes the edit.
     *
     * @param session the session of a job
     * @param lines what is offered
     * @param today the day, which stands with what was declined
     * @return one edit; does nothing where all of it stands there already
     * @throws IllegalArgumentException if the session is not one of a job
     */
    public static Edit edit(EditSession session, List<Line> lines, LocalDate today) {
        if (!(session.element() instanceof JobRecord job)) {
            throw new IllegalArgumentException(session.title() + " is no job: offers are written into a job");
        }
        var edits = new ArrayList<Edit>();
        for (var line : lines) {
            var before = job.getOffers().stream().filter(offer -> isFor(session, offer, line)).findFirst();
            if (before.isEmpty()) {
                edits.add(session.edits().inner().add(job, Literals.JOB_RECORD__OFFERS, offer(line, today), InnerEdits.END).edit());
            } else if (before.get().getAnswer() == Answer.OFFERED) {
                edits.addAll(again(session.edits(), before.get(), line, today));
            }
        }
        return Edits.all("write the offers down", edits);
    }

    private static boolean isFor(EditSession session, Offer offer, Line line) {
        return line.procedure().isPresent() ? session.library().addressOf(offer.getProcedure()).equals(line.procedure())
                : offer.getProcedure() == null && line.text().equals(offer.getText());
    }

    private static List<Edit> again(Edits edits, Offer offer, Line line, LocalDate today) {
        var all = new ArrayList<Edit>();
        all.add(edits.value(offer, Literals.OFFER__PRICE, line.price()));
        if (line.isDeclined()) {
            all.add(edits.value(offer, Literals.OFFER__ANSWER, Answer.DECLINED));
            all.add(edits.value(offer, Literals.OFFER__ON, today));
        }
        return all;
    }

    private static Offer offer(Line line, LocalDate today) {
        var offer = BookFactory.eINSTANCE.createOffer();
        line.procedure().ifPresentOrElse(procedure -> offer.setProcedure((Procedure) References.to(Literals.PROCEDURE, procedure)),
                () -> offer.setText(line.text()));
        offer.setPrice(line.price());
        if (line.isDeclined()) {
            offer.setAnswer(Answer.DECLINED);
            offer.setOn(today);
        }
        return offer;
    }
}
