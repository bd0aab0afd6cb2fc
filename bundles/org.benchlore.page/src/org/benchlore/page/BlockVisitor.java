// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import org.benchlore.page.Block.Banner;
import org.benchlore.page.Block.Bullets;
import org.benchlore.page.Block.Drawn;
import org.benchlore.page.Block.HazardPanel;
import org.benchlore.page.Block.Heading;
import org.benchlore.page.Block.Numbered;
import org.benchlore.page.Block.Pairs;
import org.benchlore.page.Block.Paragraph;
import org.benchlore.page.Block.Picture;
import org.benchlore.page.Block.Table;

/**
 * One way of showing each kind of block; the compiler holds that none is forgotten.
 *
 * @param <R> what a block becomes
 */
interface BlockVisitor<R> {

    R heading(Heading heading);

    R paragraph(Paragraph paragraph);

    R banner(Banner banner);

    R hazard(HazardPanel hazard);

    R pairs(Pairs pairs);

    R table(Table table);

    R bullets(Bullets bullets);

    R numbered(Numbered step);

    R picture(Picture picture);

    R drawn(Drawn drawn);

    default R visit(Block block) {
        if (block instanceof Heading heading) {
            return heading(heading);
        }
        if (block instanceof Paragraph paragraph) {
            return paragraph(paragraph);
        }
        if (block instanceof Banner banner) {
            return banner(banner);
        }
        return block instanceof HazardPanel hazard ? hazard(hazard) : visitList(block);
    }

    private R visitList(Block block) {
        if (block instanceof Pairs pairs) {
            return pairs(pairs);
        }
        if (block instanceof Table table) {
            return table(table);
        }
        if (block instanceof Bullets bullets) {
            return bullets(bullets);
        }
        if (block instanceof Numbered step) {
            return numbered(step);
        }
        return block instanceof Picture picture ? picture(picture) : drawn((Drawn) block);
    }
}
