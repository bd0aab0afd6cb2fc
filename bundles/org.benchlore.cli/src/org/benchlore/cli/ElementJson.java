// SPDX-License-Identifier: EPL-2.0
package org.benchlore.cli;

import java.util.Collection;

import org.benchlore.store.Library;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

/**
 * Writes an element as JSON: the names of the model's features, quantities as entered, references as file#id. What is
 * not set is left out, except what says NOT_RECORDED.
 */
final class ElementJson {

    private final Library library;

    ElementJson(Library library) {
        this.library = library;
    }

    JsonObject of(EObject element) {
        var json = new JsonObject();
        json.addProperty("type", element.eClass().getName());
        for (var feature : element.eClass().getEAllStructuralFeatures()) {
            if (element.eIsSet(feature) || isStated(feature)) {
                json.add(feature.getName(), value(feature, element.eGet(feature, false)));
            }
        }
        return json;
    }

    /** A literal has a meaning even when it is the default. */
    private static boolean isStated(EStructuralFeature feature) {
        return feature instanceof EAttribute attribute && !feature.isMany()
                && attribute.getEAttributeType() instanceof org.eclipse.emf.ecore.EEnum;
    }

    private JsonElement value(EStructuralFeature feature, Object value) {
        if (value instanceof Collection<?> many) {
            var array = new JsonArray();
            many.forEach(one -> array.add(one(feature, one)));
            return array;
        }
        return one(feature, value);
    }

    private JsonElement one(EStructuralFeature feature, Object value) {
        if (feature instanceof EReference reference) {
            return reference.isContainment() ? of((EObject) value)
                    : new JsonPrimitive(library.addressOf((EObject) value).map(Object::toString).orElse("?"));
        }
        if (value instanceof Boolean flag) {
            return new JsonPrimitive(flag);
        }
        return value instanceof Number number ? new JsonPrimitive(number) : new JsonPrimitive(value.toString());
    }
}
