// SPDX-License-Identifier: EPL-2.0
/** How fast the rules are checked. */
package org.benchlore.bench.rules;
