// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;

import org.benchlore.check.review.ReviewedText;
import org.benchlore.check.review.Reviews;
import org.benchlore.model.Address;
import org.benchlore.model.Applicability;
import org.benchlore.model.BookPackage.Literals;
import org.benchlore.model.Document;
import org.benchlore.model.Kind;
import org.benchlore.model.KitLine;
import org.benchlore.model.Media;
import org.benchlore.model.Offer;
import org.benchlore.model.Procedure;
import org.benchlore.model.Source;
import org.benchlore.model.Status;
import org.benchlore.model.TopElement;
import org.benchlore.store.BookFormat;
import org.benchlore.store.Library;
import org.benchlore.store.Row;
import org.benchlore.store.TextReferences;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Makes the form of an element that goes into a pack: without prices, people, units and jobs unless they were chosen,
 * without references to what does not come along, and with words for work that is needed and stays out. The same element
 * always gives the same form, and the form of a form is itself.
 */
public final class Stripping {

    private static final Set<EAttribute> PRICE_DAYS = Set.of(Literals.PART__PRICE_ON, Literals.SUPPLY__PRICE_ON);
    private static final Set<Class<?>> EMPTY_WITHOUT_REFERENCE = Set.of(Applicability.class, Source.class, KitLine.class);

    private final Library library;
    private final Set<Extra> extras;
    private final Predicate<Address> kept;
    private final Predicate<String> keptMedia;
    private final PrivateWords words;
    private final BookFormat format = new BookFormat();

    /**
     * Makes packed forms of the elements of one library.
     *
     * @param library the library; asked for titles and for what must not leave it
     * @param extras what comes along though it stays out otherwise
     * @param kept tells whether an element comes along
     * @param keptMedia tells whether a file below the folder media comes along
     */
    public Stripping(Library library, Set<Extra> extras, Predicate<Address> kept, Predicate<String> keptMedia) {
        this.library = library;
        this.extras = Set.copyOf(extras);
        this.kept = kept;
        this.keptMedia = keptMedia;
        this.words = new PrivateWords(library, new PackRequest("", List.of(), List.of(), List.of(), Set.of(), false, false, extras));
    }

    /**
     * Returns the packed form of a file.
     *
     * @param path path below the library
     * @param element its element; it is not touched
     * @return the bytes of the file in the pack
     */
    public byte[] bytes(String path, TopElement element) {
        var top = format.read(path, format.write(path, element)).root().orElseThrow();
        var wasAsReviewed = top instanceof Procedure procedure && Reviews.standing(procedure) == Reviews.Standing.AS_REVIEWED;
        new NeededWords(library, this::isKept).write(top);
        var all = new ArrayList<EObject>(List.of(top));
        top.eAllContents().forEachRemaining(all::add);
        all.forEach(this::strip);
        removeEmpty(all);
        if (top instanceof Procedure procedure) {
            review(procedure, (Procedure) element, wasAsReviewed);
        }
        return format.write(path, top);
    }

    /** The people of a review stay out; that it was reviewed, and where, does not. */
    private void review(Procedure procedure, Procedure original, boolean wasAsReviewed) {
        boolean lost = procedure.getReviewer() == null && original.getReviewer() != null
                || procedure.getAuthor() == null && original.getAuthor() != null;
        if (lost && procedure.getStatus() == Status.REVIEWED && procedure.getReviewedIn() == null) {
            procedure.setReviewedIn(library.catalogue().rows(Kind.SHOP).map(Row::title).findFirst().orElse("another shop"));
        }
        if (wasAsReviewed) {
            procedure.setReviewedHash(ReviewedText.sum(procedure));
        }
    }

    private boolean isKept(EObject target) {
        return !target.eIsProxy() || library.addressOf(target).filter(kept).isPresent();
    }

    private void strip(EObject object) {
        for (var feature : object.eClass().getEAllStructuralFeatures()) {
            if (!object.eIsSet(feature)) {
                continue;
            }
            if (feature instanceof EReference reference && !reference.isContainment()) {
                references(object, reference);
            } else if (feature instanceof EAttribute attribute) {
                attribute(object, attribute);
            }
        }
        if (object instanceof Document document) {
            document.setKeptAt(null);
        }
        if (object instanceof Offer offer && !extras.contains(Extra.CUSTOMERS)) {
            offer.setBy(null);
            offer.setHow(null);
        }
    }

    private void references(EObject object, EReference reference) {
        var value = object.eGet(reference, false);
        if (value instanceof List<?> many) {
            @SuppressWarnings("unchecked")
            var list = (List<EObject>) many;
            list.removeIf(target -> !isKept(target));
        } else if (value instanceof EObject target && !isKept(target)) {
            object.eUnset(reference);
        }
    }

    private void attribute(EObject object, EAttribute attribute) {
        if (attribute.getEAttributeType() == Literals.MONEY || PRICE_DAYS.contains(attribute)) {
            if (!extras.contains(Extra.PRICES)) {
                object.eUnset(attribute);
            }
        } else if (attribute.getEAttributeType().getInstanceClass() == String.class && attribute != Literals.ELEMENT__ID
                && attribute != Literals.MEDIA__FILE && attribute != Literals.PROCEDURE__REVIEWED_HASH) {
            texts(object, attribute);
        }
    }

    private void texts(EObject object, EAttribute attribute) {
        boolean isLong = attribute.getEAttributeType() == Literals.LONG_TEXT;
        if (attribute.isMany()) {
            @SuppressWarnings("unchecked")
            var list = (List<String>) object.eGet(attribute);
            list.replaceAll(text -> text(text, isLong));
        } else {
            var before = (String) object.eGet(attribute);
            var after = text(before, isLong);
            if (!after.equals(before)) {
                object.eSet(attribute, after);
            }
        }
    }

    private String text(String text, boolean isLong) {
        return words.without(isLong ? TextReferences.FORM.matcher(text).replaceAll(found -> Matcher.quoteReplacement(
                link(found.group(), found.group(1), found.group(2)))) : text);
    }

    /** A link to what stays out becomes the words that it was read as. */
    private String link(String whole, String word, String id) {
        var kind = Kind.of(word);
        var row = kind.flatMap(it -> library.catalogue().byId(id));
        if (kind.isEmpty() || row.isPresent() && kept.test(row.get().address())) {
            return whole;
        }
        return switch (kind.get()) {
            case UNIT -> "a unit of the shop";
            case JOB -> "a job of the shop";
            default -> "'" + row.map(Row::title).orElse(id) + "'";
        };
    }

    private void removeEmpty(Collection<EObject> all) {
        for (var object : all) {
            boolean isEmpty = EMPTY_WITHOUT_REFERENCE.stream().anyMatch(type -> type.isInstance(object)) && hasNoReference(object)
                    || object instanceof org.benchlore.model.Training
                    || object instanceof Media media && (media.getFile() == null || !keptMedia.test(media.getFile()));
            if (isEmpty && object.eContainer() != null) {
                EcoreUtil.remove(object);
            }
        }
    }

    private static boolean hasNoReference(EObject object) {
        return object.eClass().getEAllReferences().stream().filter(reference -> !reference.isContainment())
                .noneMatch(object::eIsSet);
    }
}
