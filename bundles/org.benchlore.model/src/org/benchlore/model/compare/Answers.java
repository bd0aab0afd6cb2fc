// SPDX-License-Identifier: EPL-2.0
package org.benchlore.model.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects the questions of one merge and looks their answers up; the same question is asked once. */
final class Answers {

    private final Map<String, Side> given;
    private final Map<String, MergeConflict> asked = new LinkedHashMap<>();

    Answers(Map<String, Side> given) {
        this.given = given;
    }

    Side ask(MergeConflict conflict) {
        asked.putIfAbsent(conflict.id(), conflict);
        return given.getOrDefault(conflict.id(), Side.MINE);
    }

    List<MergeConflict> asked() {
        return List.copyOf(asked.values());
    }

    List<MergeConflict> open() {
        return asked.values().stream().filter(conflict -> !given.containsKey(conflict.id())).toList();
    }
}
