// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

/**
 * A suspect parameter number (19 bits), a failure mode identifier (5 bits) and an occurrence count (7 bits, 127 = not
 * available), as SAE J1939-73 packs them into four bytes: SPN low byte, SPN middle byte, three SPN bits over the FMI,
 * conversion bit over the count.
 */
public record SpnFmi(int spn, int fmi, int count) {
    public static final int HIGHEST_SPN = 0x7FFFF;
    public static final int HIGHEST_FMI = 31;
    public static final int COUNT_NOT_AVAILABLE = 127;

    public SpnFmi {
        if (spn < 0 || spn > HIGHEST_SPN) {
            throw new IllegalArgumentException("An SPN goes from 0 to 524287, for example SPN 520192.");
        }
        if (fmi < 0 || fmi > HIGHEST_FMI) {
            throw new IllegalArgumentException("An FMI goes from 0 to 31, for example FMI 31.");
        }
        if (count < 0 || count > COUNT_NOT_AVAILABLE) {
            throw new IllegalArgumentException("An occurrence count goes from 0 to 127, for example 1.");
        }
    }

    /** From four bytes with the first one highest, such as {@code 0xB804030A}; the conversion bit is not looked at. */
    public static SpnFmi ofBytes(long bytes) {
        int low = (int) (bytes >> 24) & 0xFF;
        int middle = (int) (bytes >> 16) & 0xFF;
        int third = (int) (bytes >> 8) & 0xFF;
        return new SpnFmi(third >> 5 << 16 | middle << 8 | low, third & 0x1F, (int) bytes & 0x7F);
    }

    /** The four bytes with the conversion bit at zero, such as {@code B8 04 03 0A}. */
    public String bytes() {
        return Hex.bytes(spn, spn >> 8, spn >> 16 << 5 | fmi, count);
    }

    /** The canonical text, such as {@code SPN 1208 FMI 3}. */
    public String text() {
        return "SPN " + spn + " FMI " + fmi;
    }

    String remark() {
        if (spn == 0 && fmi == 0) {
            return "All zeros fill an empty place: no code is stored.";
        }
        return "FMI " + fmi + ": " + FailureMode.words(fmi) + ". " + countWords() + definer(spn);
    }

    private String countWords() {
        return switch (count) {
            case COUNT_NOT_AVAILABLE -> "";
            case 1 -> "Counted once. ";
            default -> "Counted " + count + " times. ";
        };
    }

    /** From memory of SAE J1939: the numbers from 520192 up are left to the makers. */
    static String definer(int spn) {
        return CodeAuthority.ofSpn(spn) == CodeAuthority.MAKER
                ? "The maker defines this SPN." : "The standard defines this SPN.";
    }
}
