// SPDX-License-Identifier: EPL-2.0
/** The pack as a folder of HTML pages that opens from a memory stick. */
package org.benchlore.pack.html;
