// SPDX-License-Identifier: EPL-2.0
package org.benchlore.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.benchlore.terms.CodeReader;

/** Remembers the form without separators of the codes of a library, so that each is read once and not at every search. */
final class CodeForms {

    private final Map<String, String> forms = new ConcurrentHashMap<>();

    /** Returns the form of a code as the library writes it. */
    String of(String written) {
        return forms.computeIfAbsent(written, CodeReader::indexForm);
    }
}
