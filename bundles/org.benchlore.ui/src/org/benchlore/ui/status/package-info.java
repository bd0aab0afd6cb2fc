// SPDX-License-Identifier: EPL-2.0
/** What the window itself shows of its library: title, status line, and which pages are open. */
package org.benchlore.ui.status;
