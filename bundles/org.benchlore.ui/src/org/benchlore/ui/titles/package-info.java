// SPDX-License-Identifier: EPL-2.0
/** Opening an element whose title is known already. */
package org.benchlore.ui.titles;
