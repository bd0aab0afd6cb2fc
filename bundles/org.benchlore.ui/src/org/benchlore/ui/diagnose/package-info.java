// SPDX-License-Identifier: EPL-2.0
/** The view that says what may be wrong with a machine, and takes the answers to the checks it proposes. */
package org.benchlore.ui.diagnose;
