// SPDX-License-Identifier: EPL-2.0
/** Times the packing of a library made large. */
package org.benchlore.bench.packs;
