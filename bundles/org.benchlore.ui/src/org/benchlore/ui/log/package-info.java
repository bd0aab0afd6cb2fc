// SPDX-License-Identifier: EPL-2.0
/** What the program noted while it ran, kept for a while and shown. */
package org.benchlore.ui.log;
