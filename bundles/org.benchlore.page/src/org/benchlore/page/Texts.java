// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

/** Words that stand on more than one kind of page. */
final class Texts {

    static final String NOT_RECORDED = "not recorded";
    static final String NONE = "none";
    static final String LISTED_BUT_EMPTY = "said to be listed, but the list is empty";
    static final String NOT_IN_LIBRARY = " (not in this library)";
    static final String FILE_UNREADABLE = " (its file cannot be read)";
    static final String UNTITLED = "(no title)";

    static final String INVENTED = "Invented for demonstration: not for use on a real machine.";
    static final String CHECK_FIRST =
            "Check against the manufacturer's data for this machine; local rules and a licensed person decide.";

    static final String APPLIES_TO = "Applies to";
    static final String CODES = "Codes";
    static final String SYMPTOMS = "Symptoms";
    static final String FINDING = "What was found";
    static final String VERIFICATION = "How it was proved";
    static final String FIELD_NOTES = "Field notes";
    static final String PICTURES = "Pictures and drawings";

    static final String MACHINE = "Machine";
    static final String UNIT = "Unit";
    static final String COMPONENT = "Component";
    static final String CAUSE = "Cause";
    static final String PART = "Part";
    static final String TOOL = "Tool";
    static final String PROCEDURE = "Procedure";
    static final String QUANTITY = "Quantity";
    static final String PLACE = "Place";
    static final String NUMBER = "Number";
    static final String MAKER = "Maker";
    static final String STATUS = "Status";
    static final String DATE = "Date";
    static final String BY = "By";
    static final String METER = "Meter reading";
    static final String VALUE = "Value";
    static final String REMARK = "Remark";
    static final String SKILL = "Skill";
    static final String QUALIFICATIONS = "Qualifications";
    static final String TIME = "Time";
    static final String PRICE = "Price without tax";
    static final String STATED_BY = "Stated by";

    private Texts() {
    }
}
