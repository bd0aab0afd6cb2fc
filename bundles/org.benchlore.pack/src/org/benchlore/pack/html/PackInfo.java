// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.html;

import java.time.LocalDate;
import java.util.List;

import org.benchlore.pack.LeftOut;

/**
 * What every page of a pack says of it.
 *
 * @param title what people call the pack
 * @param shop the shop that made it
 * @param made the day it was made
 * @param isInvented whether it holds invented data
 * @param leftOut what is spoken of and stayed out
 */
public record PackInfo(String title, String shop, LocalDate made, boolean isInvented, List<LeftOut> leftOut) {
}
