// SPDX-License-Identifier: EPL-2.0
package org.benchlore.terms;

import java.util.ArrayList;
import java.util.List;

/** From a canonical key back to the forms that readers, sheets and people write. */
final class WrittenForms {
    private static final int MOST_DECIMAL = 99_999_999;

    private WrittenForms() {
    }

    static List<String> of(CodeKey key) {
        try {
            return switch (key.scheme()) {
                case J2012 -> withBytes(TwoByteCode.of(key.text()).bytes(), key.text());
                case ISO14229 -> withBytes(ThreeByteCode.of(key.text()).bytes(), key.text(),
                        key.text().replace("-", ""));
                case J1939 -> spn(key.text());
                case MAKER -> maker(key.text());
                case NOT_RECORDED -> List.of(key.text());
            };
        } catch (IllegalArgumentException notCanonical) {
            return List.of(key.text());
        }
    }

    private static List<String> withBytes(String bytes, String... texts) {
        var forms = new ArrayList<>(List.of(texts));
        var joined = bytes.replace(" ", "");
        forms.addAll(List.of(bytes, "0x" + joined));
        if (Hex.isNumber(joined)) {
            forms.add(joined);
        }
        return List.copyOf(forms);
    }

    private static List<String> spn(String text) {
        var parts = text.split(" ");
        if (parts.length != 4) {
            return List.of(text);
        }
        var code = new SpnFmi(Integer.parseInt(parts[1]), Integer.parseInt(parts[3]), SpnFmi.COUNT_NOT_AVAILABLE);
        return withBytes(code.bytes(), text, "SPN" + code.spn() + "/" + code.fmi(), code.spn() + "/" + code.fmi());
    }

    private static List<String> maker(String text) {
        if (!Hex.isHex(text) || text.length() < 2 || text.length() > 8) {
            return List.of(text);
        }
        var forms = new ArrayList<>(List.of(text, "0x" + text, text + "h"));
        long value = Long.parseLong(text, 16);
        if (!Hex.isDecimal(text) && value <= MOST_DECIMAL && text.equals(MakerForms.evenHex((int) value))) {
            forms.add(Long.toString(value));
        }
        return List.copyOf(forms);
    }
}
