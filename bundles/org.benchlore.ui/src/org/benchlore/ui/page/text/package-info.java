// SPDX-License-Identifier: EPL-2.0
/** A page laid out as one text with styles, free of any widget, so that it can be tested without a window. */
package org.benchlore.ui.page.text;
