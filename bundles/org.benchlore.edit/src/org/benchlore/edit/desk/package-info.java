// SPDX-License-Identifier: EPL-2.0
/** What helps to write a note in a minute and to sort notes once a month, without a window. */
package org.benchlore.edit.desk;
