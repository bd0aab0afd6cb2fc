// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What may stand in a drawing: elements and attributes that draw, and values that fetch nothing. All else is left out,
 * known to be harmful or not. Names after SVG 1.1 (W3C), appendices on elements and attributes; from memory.
 */
final class SvgAllowed {

    private static final Set<String> ELEMENTS = Set.of("svg", "g", "defs", "symbol", "use", "title", "desc", "path", "rect",
            "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan", "textPath", "marker", "linearGradient",
            "radialGradient", "stop", "clipPath", "mask", "pattern", "image", "style");

    private static final Set<String> ATTRIBUTES = Set.of("id", "class", "style", "transform", "viewBox", "version", "x", "y",
            "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "fx", "fy", "d", "points", "width", "height", "dx", "dy",
            "rotate", "textLength", "lengthAdjust", "startOffset", "method", "spacing", "preserveAspectRatio", "offset",
            "gradientUnits", "gradientTransform", "spreadMethod", "patternUnits", "patternContentUnits",
            "patternTransform", "clipPathUnits", "maskUnits", "maskContentUnits", "markerWidth", "markerHeight",
            "markerUnits", "refX", "refY", "orient", "pathLength", "overflow", "role", "aria-label", "lang");

    private static final Set<String> PRESENTATION = Set.of("fill", "fill-opacity", "fill-rule", "stroke", "stroke-width",
            "stroke-linecap", "stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset",
            "stroke-opacity", "opacity", "color", "stop-color", "stop-opacity", "clip-path", "clip-rule", "mask",
            "marker-start", "marker-mid", "marker-end", "display", "visibility", "vector-effect", "font-family",
            "font-size", "font-style", "font-variant", "font-weight", "font-stretch", "text-anchor", "text-decoration",
            "letter-spacing", "word-spacing", "dominant-baseline", "alignment-baseline", "baseline-shift",
            "writing-mode", "direction", "unicode-bidi", "shape-rendering", "text-rendering", "image-rendering",
            "color-interpolation", "paint-order");

    private static final Set<String> FUNCTIONS = Set.of("rgb", "rgba", "hsl", "hsla", "matrix", "translate", "scale",
            "rotate", "skewx", "skewy");
    private static final Pattern FUNCTION = Pattern.compile("([\\p{Alpha}-]*)\\s*\\(");
    private static final Pattern OWN_URL = Pattern.compile("url\\(\\s*(['\"]?)#([\\w.:-]{1,200})\\1\\s*\\)");
    private static final Pattern OWN_LINK = Pattern.compile("#[\\w.:-]{1,200}");

    private SvgAllowed() {
    }

    static boolean isElement(String name) {
        return ELEMENTS.contains(name);
    }

    static boolean isAttribute(String name, String value) {
        return (ATTRIBUTES.contains(name) || PRESENTATION.contains(name)) && (isText(name) || isHarmless(value));
    }

    private static boolean isText(String name) {
        return name.equals("aria-label");
    }

    /** No escapes, no rules, no comments, and no function but those that draw; url only to the drawing itself. */
    static boolean isHarmless(String value) {
        if (value.contains("\\") || value.contains("@") || value.contains("/*") || value.contains("<")) {
            return false;
        }
        var without = OWN_URL.matcher(value).replaceAll("");
        return FUNCTION.matcher(without).results()
                .allMatch(function -> FUNCTIONS.contains(function.group(1).toLowerCase(Locale.ROOT)))
                && !without.toLowerCase(Locale.ROOT).contains("script:");
    }

    /** A style sheet may not even refer to the drawing: it is not followed what that would draw. */
    static boolean isSheet(String text) {
        return isHarmless(text) && !OWN_URL.matcher(text).find();
    }

    static boolean isOwnLink(String value) {
        return OWN_LINK.matcher(value).matches();
    }

    /** Ids of the drawing that a value refers to. */
    static Iterable<String> ownUrls(String value) {
        return OWN_URL.matcher(value).results().map(found -> found.group(2)).toList();
    }
}
