// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;
import java.util.stream.Stream;

import org.benchlore.plan.adding.Adding;
import org.benchlore.plan.adding.Proposal;
import org.eclipse.osgi.util.NLS;

/** What the ticked ones come to, the customer's money and the shop's apart. */
final class Ticked {

    private final Adding adding;
    private final Set<String> ticked;

    Ticked(Adding adding, Set<String> ticked) {
        this.adding = adding;
        this.ticked = ticked;
    }

    /** Two that share an opening are asked for both together; of three and more each pair counts, but never below nothing. */
    BigDecimal extra() {
        var each = proposals().map(one -> one.assumptions().customer().extra()).reduce(BigDecimal.ZERO, BigDecimal::add);
        var saved = adding.pairs().stream().filter(pair -> ticked.contains(pair.first()) && ticked.contains(pair.second()))
                .map(pair -> pair.extraEach().subtract(pair.extraBoth()).max(BigDecimal.ZERO)).max(BigDecimal::compareTo)
                .orElse(BigDecimal.ZERO);
        return each.subtract(saved).max(BigDecimal.ZERO);
    }

    private BigDecimal shop() {
        return proposals().flatMap(one -> one.assumptions().shop().stream()).map(sum -> sum.extra())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private Stream<Proposal> proposals() {
        return adding.proposals().stream().filter(one -> ticked.contains(one.id()));
    }

    String words() {
        long count = proposals().count();
        return count == 0 ? Messages.noneTicked : NLS.bind(Messages.ticked, new Object[] {count, money(extra()),
            adding.currency(), money(shop())});
    }

    static String money(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
