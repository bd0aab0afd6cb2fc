// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the third byte of a three-byte code says, in our own words. The list is short on purpose: the full one is the
 * standard's (SAE J2012-DA), and unofficial lists disagree at 1C to 1E, 2A to 2C and 32 to 39, which are left out.
 */
public record FailureType(int code, String words, boolean wellEvidenced) {
    /** Codes seen in published control-unit source text. */
    private static final String GOOD = """
            00 no failure type stated
            01 general electrical fault
            11 circuit shorted to ground
            12 circuit shorted to battery
            13 circuit open
            14 circuit shorted to ground or open
            15 circuit shorted to battery or open
            16 voltage too low
            17 voltage too high
            18 current too low
            19 current too high
            23 signal stuck low
            24 signal stuck high
            29 signal not valid
            44 data memory faulty
            45 program memory faulty
            46 calibration memory faulty
            47 watchdog or safety processor fault
            51 not programmed
            55 not configured
            56 configuration does not fit
            64 signal not plausible
            65 too few changes of the signal
            67 signal wrong after an event
            71 actuator stuck
            82 message counter wrong
            86 received signal not valid
            87 message missing
            88 bus switched off
            8F received signal jumps about
            96 fault inside the component
            """;
    /** Codes seen only in lists without a named source. */
    private static final String LOW = """
            02 general signal fault
            03 frequency or pulse width fault
            04 fault inside the control unit
            05 programming fault
            06 fault found by a calculation
            07 general mechanical fault
            08 bus or message fault
            09 component fault
            1A resistance too low
            1B resistance too high
            1F circuit comes and goes
            21 signal swing too small
            22 signal swing too large
            28 signal offset from its true value
            2F signal jumps about
            31 no signal
            41 checksum wrong
            42 memory faulty
            49 electronics faulty inside
            4B control unit too hot
            54 calibration missing
            66 too many changes of the signal
            72 actuator stuck open
            73 actuator stuck closed
            74 actuator slips
            77 commanded position not reached
            78 out of alignment or adjustment
            7A leak or bad seal
            7B fluid low
            92 performance not as it should be
            93 does not work
            95 put together wrongly
            97 blocked
            98 component too hot
            """;
    private static final String[] CATEGORIES = {"general", "electrical", "signal", "frequency or pulse width",
        "inside the control unit", "programming", "found by a calculation", "mechanical", "bus or message",
        "component"};
    private static final int MAKERS_OWN = 0xF;
    private static final Map<Integer, FailureType> KNOWN = known();

    /** The failure type, if it is in the short list. */
    public static Optional<FailureType> find(int code) {
        return Optional.ofNullable(KNOWN.get(code));
    }

    /** The group that the first hex digit stands for; from memory of ISO 14229-1 and SAE J2012-DA. */
    public static String category(int code) {
        int group = code >> 4 & 0xF;
        if (group == MAKERS_OWN) {
            return "maker's own";
        }
        return group < CATEGORIES.length ? CATEGORIES[group] : "reserved";
    }

    /** As {@code 64: signal not plausible.}, saying so where the evidence is thin or there is only the group. */
    static String sentence(int code) {
        var digits = Hex.digits(code, 2);
        return find(code).map(type -> digits + ": " + type.words
                + (type.wellEvidenced ? "." : " (from unofficial lists, check it)."))
                .orElseGet(() -> digits + ": not in our list; its group is '" + category(code) + "'.");
    }

    private static Map<Integer, FailureType> known() {
        var all = GOOD.lines().map(line -> parse(line, true)).collect(Collectors.toMap(FailureType::code, t -> t));
        LOW.lines().map(line -> parse(line, false)).forEach(type -> all.put(type.code, type));
        return Map.copyOf(all);
    }

    private static FailureType parse(String line, boolean wellEvidenced) {
        return new FailureType(Integer.parseInt(line.substring(0, 2), 16), line.substring(3), wellEvidenced);
    }
}
