// SPDX-License-Identifier: EPL-2.0
/** The sorting desk: what waits to be sorted, joined and confirmed. */
package org.benchlore.ui.desk;
