// SPDX-License-Identifier: EPL-2.0
/** Quantities with units and amounts of money, kept as entered and converted exactly. */
package org.benchlore.measure;
