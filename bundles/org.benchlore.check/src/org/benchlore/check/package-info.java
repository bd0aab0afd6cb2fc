// SPDX-License-Identifier: EPL-2.0
/** Rules that a book must keep so that it is safe to follow, what they find, and how it is mended. */
package org.benchlore.check;
