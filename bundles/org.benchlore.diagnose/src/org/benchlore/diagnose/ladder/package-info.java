// SPDX-License-Identifier: EPL-2.0
/** What to look at when all is new and it still fails. */
package org.benchlore.diagnose.ladder;
