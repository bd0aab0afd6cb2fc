// SPDX-License-Identifier: EPL-2.0
/** The view that weighs what is worth adding while a machine is open, and the customer's sheet made from it. */
package org.benchlore.ui.adding;
