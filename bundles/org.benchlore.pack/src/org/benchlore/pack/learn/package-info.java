// SPDX-License-Identifier: EPL-2.0
/** The way of a learner through a pack, and the progress that comes back. */
package org.benchlore.pack.learn;
