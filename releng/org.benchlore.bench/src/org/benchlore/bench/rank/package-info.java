// SPDX-License-Identifier: EPL-2.0
/** How well the product ranks, beside its peers, on sets of documents, queries and judgements. */
package org.benchlore.bench.rank;
