// SPDX-License-Identifier: EPL-2.0
/** Editors of elements: opening, saving, what was changed on the disk meanwhile, drafts after a crash. */
package org.benchlore.ui.edit;
