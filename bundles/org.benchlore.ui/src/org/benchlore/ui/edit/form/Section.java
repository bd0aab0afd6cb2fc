// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.edit.form;

import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Fields of a form that stand together.
 *
 * @param key of its heading, empty for none
 * @param fields in order
 */
record Section(String key, List<EStructuralFeature> fields) {

    static Section of(String key, EStructuralFeature... fields) {
        return new Section(key, List.of(fields));
    }
}
