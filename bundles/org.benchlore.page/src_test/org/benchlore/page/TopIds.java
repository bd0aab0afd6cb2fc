// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.model.Kind;
import org.eclipse.emf.ecore.EClass;

/** Well-formed ids for tests. */
final class TopIds {

    private TopIds() {
    }

    static String of(EClass type) {
        var kind = Kind.of(type).orElseThrow();
        return kind.isSingle() ? kind.word() : kind.isDated() ? kind.word() + "-2026-test" : kind.word() + "-test";
    }
}
