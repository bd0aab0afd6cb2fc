// SPDX-License-Identifier: EPL-2.0
/** Reading pages: one element of the library, shown as one text that is read, searched, copied and followed. */
package org.benchlore.ui.page;
