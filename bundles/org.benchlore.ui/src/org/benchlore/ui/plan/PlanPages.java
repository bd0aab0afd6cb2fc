// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.plan;

import java.util.ArrayList;
import java.util.List;

import org.benchlore.page.Block;
import org.benchlore.page.Page;
import org.benchlore.page.PlanPage;
import org.benchlore.page.drawing.AccessDrawing;
import org.benchlore.plan.Plan;
import org.benchlore.store.Library;

/** The pages of a plan as the view shows them: the standing caution stands below the title, in sight without scrolling. */
final class PlanPages {

    private final Page page;
    private final Plan plan;

    PlanPages(Library library, Plan plan) {
        this.page = PlanPage.of(library, plan);
        this.plan = plan;
    }

    Page main() {
        var blocks = new ArrayList<Block>(List.of(page.blocks().get(0)));
        blocks.addAll(banners());
        page.blocks().stream().skip(1).filter(block -> !(block instanceof Block.Banner)).forEach(blocks::add);
        return new Page(page.title(), List.copyOf(blocks));
    }

    Page picture() {
        var drawing = AccessDrawing.of(plan);
        var blocks = new ArrayList<Block>(List.of(new Block.Heading(1, drawing.title())));
        banners().stream().filter(banner -> banner.tone() == Block.Tone.INVENTED).forEach(blocks::add);
        blocks.add(new Block.Drawn(drawing));
        return new Page(drawing.title(), List.copyOf(blocks));
    }

    private List<Block.Banner> banners() {
        return page.blocks().stream().filter(Block.Banner.class::isInstance).map(Block.Banner.class::cast).toList();
    }
}
