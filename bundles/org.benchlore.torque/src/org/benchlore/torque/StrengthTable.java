// SPDX-License-Identifier: EPL-2.0
package org.benchlore.torque;

import java.util.Map;

import org.benchlore.measure.Wording;

/**
 * Minimum strengths. ISO 898-1 Table 3 (bbshalmstad.se; proof: Shigley, 9th ed., Table 8-11; class 5.6 from memory);
 * SAE J429 in ksi (Shigley and Mischke, 5th ed., p. 341; grade 2 above 3/4 in from memory); ISO 3506-1 from memory,
 * confirmed by preloads of a maker's table (mastik.pt, p. 686).
 */
final class StrengthTable {

    static final double KSI = 6.894757293168361;
    private static final double SIXTEEN = 16;
    private static final double STAINLESS_LIMIT = 24;
    private static final double THREE_QUARTERS = 0.75 * ThreadTable.INCH;

    /** Class to proof, yield, tensile in MPa. */
    private static final Map<String, double[]> METRIC = Map.of(
            "4.6", new double[] {225, 240, 400}, "4.8", new double[] {310, 340, 420},
            "5.6", new double[] {280, 300, 500}, "5.8", new double[] {380, 420, 520},
            "6.8", new double[] {440, 480, 600}, "8.8", new double[] {580, 640, 800},
            "9.8", new double[] {650, 720, 900}, "10.9", new double[] {830, 940, 1040},
            "12.9", new double[] {970, 1100, 1220});

    Strength strength(PropertyClass propertyClass, BoltThread thread) {
        boolean isInchClass = propertyClass.family() == PropertyClass.Family.SAE;
        if (isInchClass != thread.series().isInch()) {
            throw Wording.problem(propertyClass.toString(), "is for " + (isInchClass ? "inch" : "metric")
                    + " threads, but " + thread + " is not", isInchClass ? "8.8 or 10.9" : "grade 5 or grade 8");
        }
        return switch (propertyClass.family()) {
            case METRIC -> metric(propertyClass.name(), thread.diameter());
            case SAE -> sae(propertyClass, thread.diameter());
            case STAINLESS -> stainless(propertyClass.name(), thread.diameter());
        };
    }

    private static Strength metric(String name, double diameter) {
        if (name.equals("9.8") && diameter > SIXTEEN) {
            throw new IllegalArgumentException("Class 9.8 ends at M16 (ISO 898-1): look at the mark on the head again, "
                    + "for example 8.8 or 10.9.");
        }
        if (name.equals("8.8") && diameter > SIXTEEN) {
            return new Strength(600, 660, 830, "");
        }
        var row = METRIC.get(name);
        return new Strength(row[0], row[1], row[2], "");
    }

    private static Strength sae(PropertyClass grade, double diameter) {
        boolean isUpToOneInch = diameter <= ThreadTable.INCH;
        return switch (grade.name()) {
            case "2" -> diameter <= THREE_QUARTERS ? ksi(55, 57, 74) : ksi(33, 36, 60);
            case "5" -> isUpToOneInch ? ksi(85, 92, 120) : ksi(74, 81, 105);
            case "5.2" -> upToOneInch(grade, isUpToOneInch, ksi(85, 92, 120));
            case "8" -> ksi(120, 130, 150);
            default -> upToOneInch(grade, isUpToOneInch, ksi(120, 130, 150));
        };
    }

    private static Strength upToOneInch(PropertyClass grade, boolean isUpToOneInch, Strength strength) {
        if (!isUpToOneInch) {
            throw Wording.problem(grade.toString(), "ends at 1 in (SAE J429)", "grade 5 or grade 8");
        }
        return strength;
    }

    private static Strength ksi(double proof, double yield, double tensile) {
        return new Strength(proof * KSI, yield * KSI, tensile * KSI, "");
    }

    private static Strength stainless(String name, double diameter) {
        var remark = "stainless has no proof stress in its standard, the 0.2 % limit stands for it"
                + (diameter > STAINLESS_LIMIT && !name.equals("50")
                        ? "; above M24 the strength of this class must be agreed with the supplier" : "");
        return switch (name) {
            case "50" -> new Strength(210, 210, 500, remark);
            case "70" -> new Strength(450, 450, 700, remark);
            default -> new Strength(600, 600, 800, remark);
        };
    }
}
