// SPDX-License-Identifier: EPL-2.0
/** Drafts of what was not saved yet, in the user's own folder, and how they come back after a crash. */
package org.benchlore.edit.draft;
