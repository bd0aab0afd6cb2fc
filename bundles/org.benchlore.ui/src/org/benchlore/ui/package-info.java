// SPDX-License-Identifier: EPL-2.0
/** The window's views, pages and commands over an open library. */
package org.benchlore.ui;
