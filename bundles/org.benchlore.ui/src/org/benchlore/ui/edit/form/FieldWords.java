// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.Optional;
import java.util.ResourceBundle;

import org.benchlore.model.compare.Words;
import org.benchlore.page.Labels;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Labels and hints of fields; a field without a label of its own is called as in the list of changes. */
final class FieldWords {

    private final ResourceBundle words = ResourceBundle.getBundle(FieldWords.class.getPackageName() + ".fields");
    private final Words plain = new Words();

    String label(EStructuralFeature feature) {
        return find(key(feature)).orElseGet(() -> Labels.capital(plain.field(feature)));
    }

    /** An example of what to write, or empty. */
    Optional<String> hint(EStructuralFeature feature) {
        return find(key(feature) + ".hint").or(() -> find("hint." + feature.getEType().getName()));
    }

    String section(String key) {
        return find("section." + key).orElse(key);
    }

    private static String key(EStructuralFeature feature) {
        return feature.getEContainingClass().getName() + "." + feature.getName();
    }

    private Optional<String> find(String key) {
        return words.containsKey(key) ? Optional.of(words.getString(key)) : Optional.empty();
    }
}
