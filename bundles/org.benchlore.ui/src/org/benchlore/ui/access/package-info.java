// SPDX-License-Identifier: EPL-2.0
/** Splits the hours of a whole job into an access and the work itself. */
package org.benchlore.ui.access;
