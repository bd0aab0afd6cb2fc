// SPDX-License-Identifier: EPL-2.0
/** One field that finds everything, while it is typed. */
package org.benchlore.ui.search;
