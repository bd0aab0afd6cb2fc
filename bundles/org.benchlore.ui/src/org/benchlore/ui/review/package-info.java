// SPDX-License-Identifier: EPL-2.0
/** Procedures are reviewed, withdrawn and compared with what they were. */
package org.benchlore.ui.review;
