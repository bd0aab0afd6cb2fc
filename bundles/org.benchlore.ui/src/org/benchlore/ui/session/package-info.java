// SPDX-License-Identifier: EPL-2.0
/** The library that the window works in, and what the window remembers from one start to the next. */
package org.benchlore.ui.session;
