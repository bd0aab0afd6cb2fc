// SPDX-License-Identifier: EPL-2.0
/** Reads out of a library what ranking causes needs. Inner to the room. */
package org.benchlore.diagnose.book;
