// SPDX-License-Identifier: EPL-2.0
package org.benchlore.measure;

/**
 * What a quantity measures. Each dimension knows its name in plain words, a well-formed example for messages, and
 * whether a value below zero makes sense (a temperature, a gauge pressure or a camber angle can; a mass cannot).
 */
public enum Dimension {
    TORQUE("a torque", "45 N·m", false),
    ANGLE("an angle", "90 °", true),
    LENGTH("a length", "12.5 mm", false),
    TIME("a time", "35 min", false),
    PRESSURE("a pressure", "18.5 bar", true),
    VOLUME("a volume", "4.5 l", false),
    MASS("a mass", "12 kg", false),
    FORCE("a force", "250 N", false),
    TEMPERATURE("a temperature", "80 °C", true),
    VOLTAGE("a voltage", "12.6 V", true),
    CURRENT("a current", "1.8 A", true),
    RESISTANCE("a resistance", "4.7 kΩ", false),
    ROTATION("a speed of rotation", "800 rpm", false),
    SPEED("a speed", "30 km/h", false),
    AREA("an area", "50 mm²", false),
    POWER("a power", "55 kW", false),
    FREQUENCY("a frequency", "50 Hz", false),
    FLOW("a flow", "18 l/min", false),
    RATIO("a percentage", "40 %", true),
    COUNT("a count", "400 starts", false);

    private final String words;
    private final String example;
    private final boolean signed;

    Dimension(String words, String example, boolean signed) {
        this.words = words;
        this.example = example;
        this.signed = signed;
    }

    /** The name with its article, as used inside a sentence: {@code a torque}. */
    public String words() {
        return words;
    }

    /** A text that {@link Quantity#parse(String, Dimension)} accepts for this dimension. */
    public String example() {
        return example;
    }

    /** Whether a value below zero is accepted. */
    public boolean signed() {
        return signed;
    }
}
