// SPDX-License-Identifier: EPL-2.0
package org.benchlore.check.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.benchlore.check.Neighbours;
import org.benchlore.check.Subject;
import org.benchlore.model.Address;
import org.benchlore.model.Kind;
import org.benchlore.model.Part;
import org.benchlore.model.Step;
import org.benchlore.model.Work;
import org.eclipse.emf.ecore.EObject;

/** What a work lists, by the files that its lists refer to. */
final class Listed {

    private Listed() {
    }

    /** Paths of the parts listed, with what is in their kits. */
    static Set<String> parts(Work work, Neighbours neighbours) {
        var paths = new HashSet<String>();
        for (var use : work.getParts()) {
            neighbours.addressOf(use.getPart()).ifPresent(at -> paths.add(at.path()));
            neighbours.follow(use.getPart(), Part.class).ifPresent(part -> part.getKit()
                    .forEach(line -> neighbours.addressOf(line.getPart()).ifPresent(at -> paths.add(at.path()))));
        }
        return paths;
    }

    static Set<String> paths(List<? extends EObject> references, Neighbours neighbours) {
        var paths = new HashSet<String>();
        references.forEach(one -> neighbours.addressOf(one).ifPresent(at -> paths.add(at.path())));
        return paths;
    }

    /** What a step's text names of a kind. */
    static List<Address> named(Subject subject, Step step, Kind kind) {
        return TextLink.of(subject, step).stream().filter(link -> link.kind().equals(kind.word()))
                .map(link -> new Address(kind.folder() + "/" + link.id() + Kind.ENDING, link.id())).distinct().toList();
    }
}
