// SPDX-License-Identifier: EPL-2.0
package org.benchlore.plan.adding;

/** A figure that a proposal stands on. Each can be changed; nothing else goes into the sums. */
public enum Figure {
    /** Extra if done now. */
    EXTRA("extra if done now, with tax", Form.MONEY),
    /** Labour of the later job. */
    LABOUR("labour if it must come apart again, with tax", Form.MONEY),
    /** Parts of the later job. */
    PARTS("parts if it must come apart again, with tax", Form.MONEY),
    /** Supplies of the later job. */
    SUPPLIES("fluids and other supplies if it must come apart again, with tax", Form.MONEY),
    /** Finding out what it is. */
    FINDING("finding out what it is, with tax", Form.MONEY),
    /** What its failure ruins. */
    RUINS("renewing what its failure ruins, with tax", Form.MONEY),
    /** How often its failure ruins that. */
    RUINS_OFTEN("how often its failure ruins that, in a hundred", Form.OF_HUNDRED),
    /** Days the unit stands for the later job. */
    DAYS_OUT("days out of service for the later job", Form.NUMBER),
    /** What such a day costs the customer. */
    DAY_OUT("what a day out of service costs the customer", Form.MONEY),
    /** What the unit is worth. */
    UNIT_VALUE("what the unit is worth: a later repair costs no more", Form.MONEY),
    /** Testing now. */
    TEST("testing it now, with tax", Form.MONEY),
    /** How many of those that would fail the test finds. */
    TEST_FINDS("of a hundred that would fail, how many a test finds", Form.OF_HUNDRED),
    /** How many of those that would hold the test blames. */
    TEST_BLAMES("of a hundred that would hold, how many a test blames", Form.OF_HUNDRED),
    /** How many of those that would fail the eye finds. */
    EYE_FINDS("of a hundred that would fail, how many the eye finds", Form.OF_HUNDRED),
    /** How many of those that would hold the eye blames. */
    EYE_BLAMES("of a hundred that would hold, how many the eye blames", Form.OF_HUNDRED),
    /** Days the part takes to come, 0 if it is here. */
    PART_DAYS("days the parts take to come", Form.NUMBER),
    /** Having the part on the shelf for nothing. */
    HOLDING("parts on the shelf for nothing, with tax", Form.MONEY),
    /** The shop's extra. */
    SHOP_EXTRA("the shop's own: extra if done now, without tax", Form.MONEY),
    /** The shop's later job. */
    SHOP_AGAIN("the shop's own: the whole later job, without tax", Form.MONEY),
    /** Finding out and what is ruined, for the shop. */
    SHOP_BESIDE("the shop's own: finding out what it is, and what is ruined, without tax", Form.MONEY),
    /** What a comeback costs the shop beside the work. */
    COMEBACK_COST("the shop's own: a comeback beside the work", Form.MONEY),
    /** How often one that is left in brings the unit back. */
    COMES_BACK("left in, how often it brings the unit back, in a hundred", Form.OF_HUNDRED),
    /** How often renewing it brings trouble. */
    TROUBLE("renewed, how often that brings trouble of its own, in a hundred", Form.OF_HUNDRED);

    /** How a figure is written. */
    public enum Form {
        /** An amount in the shop's currency. */
        MONEY,
        /** 0 to 100. */
        OF_HUNDRED,
        /** A number, 0 or more. */
        NUMBER
    }

    private final String words;
    private final Form form;

    Figure(String words, Form form) {
        this.words = words;
        this.form = form;
    }

    /** What it is, in the words of the trade. */
    public String words() {
        return words;
    }

    /** How it is written. */
    public Form form() {
        return form;
    }

    /** Its name on the command line and in JSON, such as {@code day-out}. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
