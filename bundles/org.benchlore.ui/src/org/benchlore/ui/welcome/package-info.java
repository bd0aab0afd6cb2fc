// SPDX-License-Identifier: EPL-2.0
/** The welcome page: what the program is for, and ways to a library. */
package org.benchlore.ui.welcome;
