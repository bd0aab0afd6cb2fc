// SPDX-License-Identifier: EPL-2.0
/** What is read of an element, as blocks, and renderers for the terminal and for HTML. */
package org.benchlore.page;
