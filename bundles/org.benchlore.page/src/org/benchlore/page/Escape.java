// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

/** Makes text harmless within HTML, in elements and in quoted attributes. */
final class Escape {

    private Escape() {
    }

    static String html(String text) {
        return Wrapping.clean(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replace("\"", "&quot;").replace("'", "&#39;");
    }

    /** Escapes text and keeps its line breaks. */
    static String lines(String text) {
        return html(text).replace("\n", "<br>\n");
    }
}
