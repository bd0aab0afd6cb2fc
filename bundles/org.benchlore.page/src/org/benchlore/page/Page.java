// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page;

import java.util.List;

/**
 * What is read of one element, free of any way of showing it.
 *
 * @param title its title
 * @param blocks from top to bottom; the first is a level 1 heading, banners follow it
 */
public record Page(String title, List<Block> blocks) {
}
