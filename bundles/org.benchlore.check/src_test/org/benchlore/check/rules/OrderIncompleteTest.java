// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import org.benchlore.check.Mirror;

class OrderIncompleteTest extends Mirror {

    OrderIncompleteTest() {
        super("order-incomplete", "machines/dravholm-hl26.xmi",
                b -> b.fastening("fastening-crossmember").setOrder("6 7 5 8 4 9 3 10 2 11 1 1"),
                "fastening-crossmember",
                b -> b.fastening("fastening-crossmember").setOrder("1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12"));
    }
}
