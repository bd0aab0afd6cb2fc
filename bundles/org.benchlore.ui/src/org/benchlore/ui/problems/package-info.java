// SPDX-License-Identifier: EPL-2.0
/** What is wrong with the files of the library. */
package org.benchlore.ui.problems;
