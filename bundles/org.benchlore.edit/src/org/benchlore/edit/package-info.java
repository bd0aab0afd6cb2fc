// SPDX-License-Identifier: EPL-2.0
/** Edit sessions: a working copy with undo, saved through the library; conflicts as questions, never overwritten. */
package org.benchlore.edit;
