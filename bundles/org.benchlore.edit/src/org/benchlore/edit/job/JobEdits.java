// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.benchlore.edit.Edit;
import org.benchlore.edit.EditSession;
import org.benchlore.edit.Edits;
import org.benchlore.edit.InnerEdits;
import org.benchlore.edit.InnerEdits.Adding;
import org.benchlore.model.Address;
import org.benchlore.model.Answer;
import org.benchlore.model.BookFactory;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.ComebackReason;
import org.benchlore.model.JobRecord;
import org.benchlore.model.JobState;
import org.benchlore.model.LeftInPlace;
import org.benchlore.model.Offer;
import org.benchlore.model.RoundKind;

/** Makes the edits of a job record as a whole: rounds, what is left in place, offers, waiting, comeback, the end. */
public final class JobEdits {

    private final EditSession session;
    private final JobRecord job;
    private final Fields fields;

    /**
     * Makes it.
     *
     * @param session the session of a job record
     * @throws ClassCastException if it is a session of something else
     */
    public JobEdits(EditSession session) {
        this.session = session;
        this.job = (JobRecord) session.element();
        this.fields = new Fields(session);
    }

    /**
     * Begins a round behind the others.
     *
     * @param kind what it is
     * @param day when
     * @param planned procedures that it is for
     * @param text what happened; may be empty
     * @return the edit and the round
     */
    public Adding nextRound(RoundKind kind, LocalDate day, List<Address> planned, String text) {
        var round = BookFactory.eINSTANCE.createRound();
        round.setKind(kind);
        round.setDate(day);
        fields.read(round, Literals.ROUND__TEXT, text);
        fields.pointAll(round, Literals.ROUND__PLANNED, planned);
        var adding = session.edits().inner().add(job, Literals.JOB_RECORD__ROUNDS, round, InnerEdits.END);
        return new Adding(Edits.all("begin a round", List.of(adding.edit())), adding.element());
    }

    /**
     * Writes down values to be saved before the strip; what is asked for already stays as it is.
     *
     * @param values what they are, each with its value as typed, which may be empty
     * @return the edit, which does nothing if all of them stand there
     */
    public Edit save(Map<String, String> values) {
        var there = job.getSaved().stream().map(saved -> saved.getWhat()).toList();
        var edits = new ArrayList<Edit>();
        values.forEach((what, value) -> {
            if (!there.contains(what)) {
                var saved = BookFactory.eINSTANCE.createSavedValue();
                saved.setWhat(what);
                fields.read(saved, Literals.SAVED_VALUE__VALUE, value);
                edits.add(session.edits().inner().add(job, Literals.JOB_RECORD__SAVED, saved, InnerEdits.END).edit());
            }
        });
        return Edits.all("propose values to save", edits);
    }

    /**
     * Proposes that old parts are left in place; a person confirms each.
     *
     * @param components components, each with why
     * @return the edit, which does nothing if all of them stand there
     */
    public Edit leave(Map<Address, String> components) {
        var recorded = new Recorded(session.library());
        var edits = new ArrayList<Edit>();
        components.forEach((component, why) -> {
            if (job.getLeft().stream().noneMatch(left -> recorded.leads(left.getComponent(), component))) {
                var left = BookFactory.eINSTANCE.createLeftInPlace();
                fields.point(left, Literals.LEFT_IN_PLACE__COMPONENT, Optional.of(component));
                fields.read(left, Literals.LEFT_IN_PLACE__TEXT, why);
                edits.add(session.edits().inner().add(job, Literals.JOB_RECORD__LEFT, left, InnerEdits.END).edit());
            }
        });
        return Edits.all("propose what is left in place", edits);
    }

    /**
     * Confirms that an old part was left in place.
     *
     * @param left an entry of the record
     * @param person who says so; empty takes the confirmation back
     * @return the edit
     */
    public Edit confirm(LeftInPlace left, Optional<Address> person) {
        return fields.reference(left, Literals.LEFT_IN_PLACE__CONFIRMED_BY, person);
    }

    /**
     * Offers work to the customer.
     *
     * @param procedure the work, where it is a procedure
     * @param text in words; may be empty
     * @param price price without tax as typed; may be empty
     * @param day when
     * @return the edit and the offer
     * @throws IllegalArgumentException with a plain sentence if the price cannot be read, or nothing is offered
     */
    public Adding offer(Optional<Address> procedure, String text, String price, LocalDate day) {
        if (procedure.isEmpty() && text.isBlank()) {
            throw new IllegalArgumentException("Nothing is offered yet: choose a procedure or say it in words");
        }
        var offer = BookFactory.eINSTANCE.createOffer();
        fields.point(offer, Literals.OFFER__PROCEDURE, procedure);
        fields.read(offer, Literals.OFFER__TEXT, text);
        fields.read(offer, Literals.OFFER__PRICE, price);
        offer.setOn(day);
        var adding = session.edits().inner().add(job, Literals.JOB_RECORD__OFFERS, offer, InnerEdits.END);
        return new Adding(Edits.all("offer work", List.of(adding.edit())), adding.element());
    }

    /**
     * Writes the customer's answer.
     *
     * @param offer an offer of the record
     * @param answer accepted or declined, or offered while there is none
     * @param by who answered
     * @param how by telephone, signed
     * @param day when
     * @return the edit
     */
    public Edit answer(Offer offer, Answer answer, String by, String how, LocalDate day) {
        return Edits.all("write the answer", List.of(
                session.edits().text(offer, Literals.OFFER__ANSWER, answer.getName()),
                session.edits().text(offer, Literals.OFFER__BY, by),
                session.edits().text(offer, Literals.OFFER__HOW, how),
                session.edits().value(offer, Literals.OFFER__ON, day)));
    }

    /**
     * Says where the job stands. Whatever is not closed has no day of hand-back.
     *
     * @param state open or waiting
     * @return the edit
     * @throws IllegalArgumentException if it is to be closed, which needs a day: {@link #close}
     */
    public Edit state(JobState state) {
        if (state == JobState.CLOSED) {
            throw new IllegalArgumentException("A job is closed on a day: write the day it was handed back");
        }
        return Edits.all("change where the job stands", List.of(
                session.edits().value(job, Literals.JOB_RECORD__STATE, state == JobState.NOT_RECORDED ? null : state),
                session.edits().value(job, Literals.JOB_RECORD__CLOSED, null)));
    }

    /**
     * Closes the job.
     *
     * @param day the day it was handed back
     * @return the edit
     * @throws IllegalArgumentException with a plain sentence if the day lies before the first one
     */
    public Edit close(LocalDate day) {
        if (job.getOpened() != null && day.isBefore(job.getOpened())) {
            throw new IllegalArgumentException("The job began on " + job.getOpened() + " and cannot be handed back on "
                    + day + ": correct one of the days");
        }
        return Edits.all("close the job", List.of(
                session.edits().value(job, Literals.JOB_RECORD__STATE, JobState.CLOSED),
                session.edits().value(job, Literals.JOB_RECORD__CLOSED, day)));
    }

    /**
     * Says that the job is a comeback.
     *
     * @param of the job it comes back from; empty if it is none after all
     * @param reason why it came back
     * @return the edit
     */
    public Edit comeback(Optional<Address> of, ComebackReason reason) {
        var why = of.isEmpty() || reason == ComebackReason.NOT_RECORDED ? null : reason;
        return Edits.all("say that it is a comeback", List.of(
                fields.reference(job, Literals.JOB_RECORD__COMEBACK_OF, of),
                session.edits().value(job, Literals.JOB_RECORD__COMEBACK_REASON, why)));
    }
}
