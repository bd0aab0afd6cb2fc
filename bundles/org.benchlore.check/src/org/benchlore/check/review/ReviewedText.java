// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.review;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Set;

import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Procedure;
import org.benchlore.model.compare.Targets;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The sum of what is reviewed in a procedure: everything but the review itself. SHA-256, lower-case hexadecimal, over
 * the names and written values of all fields that are set, in the order of the model; it does not depend on the form of the
 * file.
 */
public final class ReviewedText {

    /** What a review or a withdrawal writes, and the times, which are compared with jobs by themselves. */
    private static final Set<EStructuralFeature> LEFT_OUT = Set.of(Literals.PROCEDURE__STATUS, Literals.PROCEDURE__REVISION,
            Literals.PROCEDURE__REVIEWER, Literals.PROCEDURE__REVIEWED_ON, Literals.PROCEDURE__REVIEWED_HASH, Literals.PROCEDURE__REVIEWED_IN,
            Literals.PROCEDURE__WITHDRAWN_REASON, Literals.PROCEDURE__REPLACED_BY,
            Literals.TOP_ELEMENT__FORMAT_VERSION, Literals.WORK__MINUTES_CHECKED_ON);

    private final MessageDigest digest;

    private ReviewedText() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    static Set<EStructuralFeature> leftOut() {
        return LEFT_OUT;
    }

    /** Returns the sum of a procedure. */
    public static String sum(Procedure procedure) {
        var text = new ReviewedText();
        text.add(procedure);
        return HexFormat.of().formatHex(text.digest.digest());
    }

    private void add(EObject object) {
        var type = object.eClass();
        for (var feature : type.getEAllStructuralFeatures()) {
            if (object.eIsSet(feature) && !LEFT_OUT.contains(feature)) {
                add("{" + feature.getName());
                values(object, feature);
                add("}");
            }
        }
    }

    private void values(EObject object, EStructuralFeature feature) {
        var value = object.eGet(feature, false);
        for (var one : value instanceof Collection<?> many ? many : Set.of(value)) {
            if (feature instanceof EAttribute attribute) {
                add("=" + EcoreUtil.convertToString(attribute.getEAttributeType(), one));
            } else if (((EReference) feature).isContainment()) {
                add("(");
                add((EObject) one);
                add(")");
            } else {
                add("#" + Targets.text(object, (EObject) one));
            }
        }
    }

    private void add(String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }
}
