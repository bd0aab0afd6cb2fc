// SPDX-License-Identifier: EPL-2.0
/** Writing down what was learned, in as few keys as possible. */
package org.benchlore.ui.note;
