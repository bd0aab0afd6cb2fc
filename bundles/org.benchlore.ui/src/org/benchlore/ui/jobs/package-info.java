// SPDX-License-Identifier: EPL-2.0
/** The jobs of the shop: which are open, what each waits for, what is next to do. */
package org.benchlore.ui.jobs;
