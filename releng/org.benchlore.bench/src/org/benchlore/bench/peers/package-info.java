// SPDX-License-Identifier: EPL-2.0
/** The engines beside which the product is measured, each in its plainest use. */
package org.benchlore.bench.peers;
