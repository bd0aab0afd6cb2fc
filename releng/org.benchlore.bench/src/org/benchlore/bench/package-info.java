// SPDX-License-Identifier: EPL-2.0
/**
 * Measures the product's search beside its peers in one run: how well it ranks and how fast it is. Not shipped.
 */
package org.benchlore.bench;
