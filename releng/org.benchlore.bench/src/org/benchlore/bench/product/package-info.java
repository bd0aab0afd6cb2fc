// SPDX-License-Identifier: EPL-2.0
/** The product under measurement, used by nothing but the doors that everybody uses. */
package org.benchlore.bench.product;
