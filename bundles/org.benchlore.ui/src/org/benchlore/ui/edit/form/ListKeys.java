// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Numbers the lists of a form, so that Alt and a digit add to one of them from any field of the form. */
final class ListKeys {

    private static final int MOST = 9;

    private final List<InnerListField> lists = new ArrayList<>();
    private final int most;

    ListKeys() {
        this(MOST);
    }

    private ListKeys(int most) {
        this.most = most;
    }

    /** Gives no digits. */
    static ListKeys none() {
        return new ListKeys(0);
    }

    /** Takes a list in; returns its digit, or 0 if there are no more digits. */
    int number(InnerListField list) {
        lists.add(list);
        return lists.size() <= most ? lists.size() : 0;
    }

    /** The list with a digit, if it is still shown. */
    Optional<InnerListField> list(int digit) {
        return digit < 1 || digit > Math.min(most, lists.size()) ? Optional.empty()
                : Optional.of(lists.get(digit - 1)).filter(InnerListField::isShown);
    }
}
