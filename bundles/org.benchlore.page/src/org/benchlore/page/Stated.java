// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.StatedBy;

/** Says who states a figure. A calculated figure never reads like the maker's. */
final class Stated {

    private Stated() {
    }

    static String by(String figure, StatedBy who) {
        return switch (who) {
            case MAKER, SHOP -> figure + " stated by " + Labels.of(who);
            case CALCULATED -> figure + " " + Labels.of(who);
            case NOT_RECORDED -> "who states the " + figure + ": " + Texts.NOT_RECORDED;
        };
    }
}
