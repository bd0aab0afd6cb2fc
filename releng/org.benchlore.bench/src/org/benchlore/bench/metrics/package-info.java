// SPDX-License-Identifier: EPL-2.0
/** Measures of a ranking against judgements, and the test whether two rankings differ. */
package org.benchlore.bench.metrics;
