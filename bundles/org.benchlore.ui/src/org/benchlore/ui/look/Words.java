// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.look;

import java.util.Locale;
import java.util.Map;

import org.benchlore.model.Kind;

/** Words for kinds and states as people read them in the window. */
public final class Words {

    private static final Map<String, String> STATES = Map.ofEntries(
            Map.entry("DRAFT", Messages.stateDraft), Map.entry("REVIEWED", Messages.stateReviewed),
            Map.entry("WITHDRAWN", Messages.stateWithdrawn), Map.entry("UNSORTED", Messages.stateUnsorted),
            Map.entry("SUSPECTED", Messages.stateSuspected), Map.entry("SEEN", Messages.stateSeen),
            Map.entry("HELD", Messages.stateHeld), Map.entry("RULED_OUT", Messages.stateRuledOut),
            Map.entry("SUPERSEDED", Messages.stateSuperseded), Map.entry("OPEN", Messages.stateOpen),
            Map.entry("WAITING_FOR_PARTS", Messages.stateWaitingForParts),
            Map.entry("WAITING_FOR_ANSWER", Messages.stateWaitingForAnswer), Map.entry("CLOSED", Messages.stateClosed),
            Map.entry("NOT_RECORDED", ""), Map.entry("", ""));

    private Words() {
    }

    /**
     * Returns the word for one element of a kind.
     *
     * @param kind a kind
     * @return a noun with a capital letter
     */
    public static String one(Kind kind) {
        return switch (kind) {
            case PROCEDURE -> Messages.procedure;
            case NOTE -> Messages.note;
            case MACHINE -> Messages.machine;
            case UNIT -> Messages.unit;
            case CODE -> Messages.code;
            case PART -> Messages.part;
            case TOOL -> Messages.tool;
            case SUPPLY -> Messages.supply;
            case DOCUMENT -> Messages.document;
            case JOB -> Messages.job;
            case GLOSSARY -> Messages.glossary;
            case SHOP -> Messages.shop;
        };
    }

    /**
     * Returns the word for several elements of a kind.
     *
     * @param kind a kind
     * @return a plural with a capital letter
     */
    public static String many(Kind kind) {
        return switch (kind) {
            case PROCEDURE -> Messages.procedures;
            case NOTE -> Messages.notes;
            case MACHINE -> Messages.machines;
            case UNIT -> Messages.units;
            case CODE -> Messages.codes;
            case PART -> Messages.parts;
            case TOOL -> Messages.tools;
            case SUPPLY -> Messages.supplies;
            case DOCUMENT -> Messages.documents;
            case JOB -> Messages.jobs;
            case GLOSSARY -> Messages.glossary;
            case SHOP -> Messages.shop;
        };
    }

    /**
     * Returns the words for a state.
     *
     * @param literal literal of a status, may be empty
     * @return lower-case words, empty where there is nothing to say
     */
    public static String state(String literal) {
        return STATES.getOrDefault(literal, literal.toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
