// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/**
 * The byte orders that control units older than the present one use for the SPN while the conversion bit is set; the
 * bytes do not say which. From memory of SAE J1939-73: most significant bits first, or the two whole bytes swapped,
 * with the three lowest bits over the FMI; or the present order.
 */
final class OldSpnOrder {
    private static final int CONVERSION_BIT = 0x80;

    private OldSpnOrder() {
    }

    static boolean applies(long bytes) {
        return (bytes & CONVERSION_BIT) != 0;
    }

    static void read(long bytes, Findings found) {
        int first = (int) (bytes >> 24) & 0xFF;
        int second = (int) (bytes >> 16) & 0xFF;
        int third = (int) (bytes >> 8) & 0xFF;
        var present = SpnFmi.ofBytes(bytes);
        add(found, present.spn(), present, "the present byte order");
        add(found, first << 11 | second << 3 | third >> 5, present, "highest bits first");
        add(found, second << 11 | first << 3 | third >> 5, present, "the first two bytes swapped");
    }

    private static void add(Findings found, int spn, SpnFmi present, String order) {
        var code = new SpnFmi(spn, present.fmi(), present.count());
        found.add(CodeScheme.J1939, code.text(), "Four bytes of an older kind, read with " + order
                + "; the bytes do not say which order it is. " + code.remark());
    }
}
