// SPDX-License-Identifier: EPL-2.0
/** How fast the product is and how much room it takes, beside its peers, on invented notes. */
package org.benchlore.bench.speed;
