// SPDX-License-Identifier: EPL-2.0
/** Drawings as records, and as SVG: for the window, for HTML and for paper, readable in black and white. */
package org.benchlore.page.drawing;
