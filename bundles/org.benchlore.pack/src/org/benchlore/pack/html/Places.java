// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.benchlore.model.Access;
import org.benchlore.model.Address;
import org.benchlore.model.Cause;
import org.benchlore.model.Component;
import org.benchlore.model.Element;
import org.benchlore.model.Machine;
import org.benchlore.model.Procedure;
import org.benchlore.model.Step;
import org.benchlore.model.TopElement;
import org.benchlore.model.Way;
import org.benchlore.model.Work;
import org.benchlore.page.Block;
import org.benchlore.store.Library;

/** The places of a page that a link can lead to: its steps; of a machine also its accesses, components and causes. */
final class Places {

    private final Iterator<Step> steps;
    private final List<Access> accesses;
    private final List<Element> components = new ArrayList<>();
    private final List<Element> causes = new ArrayList<>();

    Places(TopElement element) {
        this.steps = steps(element).iterator();
        this.accesses = element instanceof Machine machine ? machine.getAccesses() : List.of();
        if (element instanceof Machine machine) {
            machine.getComponents().forEach(this::add);
        }
    }

    private void add(Component component) {
        components.add(component);
        causes.addAll(component.getCauses());
        component.getComponents().forEach(this::add);
    }

    static boolean isPlace(Library library, Address target) {
        return library.element(target).filter(it -> it instanceof Step || it instanceof Access || it instanceof Component
                || it instanceof Cause).isPresent();
    }

    boolean hasSteps() {
        return steps.hasNext();
    }

    Step nextStep() {
        return steps.next();
    }

    /** Gives the places within a block their names. */
    String named(Block block, String html) {
        if (block instanceof Block.Heading heading && heading.text().startsWith("Access: ")) {
            return accesses.stream().filter(access -> heading.text().equals("Access: " + access.getTitle())).map(Access::getId)
                    .filter(Objects::nonNull).findFirst().map(id -> named(html, "<h", id)).orElse(html);
        }
        if (block instanceof Block.Bullets bullets && bullets.items().size() == components.size()) {
            return named(html, "<li", components);
        }
        return block instanceof Block.Table table && table.rows().size() == causes.size() && table.caption().equals("How it fails")
                ? named(html, "<tr", "<tbody>", causes) : html;
    }

    private static String named(String html, String tag, List<Element> elements) {
        return named(html, tag, "", elements);
    }

    private static String named(String html, String tag, String from, List<Element> elements) {
        var named = new StringBuilder();
        int at = html.indexOf(from);
        named.append(html, 0, at);
        for (var element : elements) {
            int next = html.indexOf(tag, at);
            if (next < 0) {
                break;
            }
            named.append(html, at, next).append(tag);
            if (element.getId() != null) {
                named.append(" id=\"").append(Html.text(element.getId())).append('"');
            }
            at = next + tag.length();
        }
        return named.append(html.substring(at)).toString();
    }

    /** Gives the first tag of its kind a name. */
    static String named(String html, String tag, String id) {
        int at = html.indexOf(tag);
        if (id == null || at < 0) {
            return html;
        }
        int end = tag.equals("<h") ? at + 3 : at + tag.length();
        return html.substring(0, end) + " id=\"" + Html.text(id) + "\"" + html.substring(end);
    }

    /** Every step in the order in which its page shows it. */
    private static List<Step> steps(TopElement element) {
        Stream<Work> works = Stream.empty();
        if (element instanceof Procedure procedure) {
            works = procedure.getWays().stream().map(Way::getWork);
        } else if (element instanceof Machine machine) {
            works = machine.getAccesses().stream().flatMap(access -> Stream.of(access.getStrip(), access.getRefit()));
        }
        return works.filter(Objects::nonNull).flatMap(work -> work.getSteps().stream()).toList();
    }
}
