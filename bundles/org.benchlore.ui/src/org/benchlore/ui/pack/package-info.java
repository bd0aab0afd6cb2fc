// SPDX-License-Identifier: EPL-2.0
/** Packs in the window: choosing and making one, taking one in, a learner's progress. */
package org.benchlore.ui.pack;
