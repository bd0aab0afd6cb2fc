// SPDX-License-Identifier: EPL-2.0
package org.benchlore.page.drawing;

/**
 * Where a fastener is drawn, and where its place number stands beside it.
 *
 * @param x middle of the ring
 * @param y middle of the ring
 * @param besideX middle of the place number
 * @param besideY middle of the place number
 */
record Spot(double x, double y, double besideX, double besideY) {
}
