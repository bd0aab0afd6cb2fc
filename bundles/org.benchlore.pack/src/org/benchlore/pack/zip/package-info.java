// SPDX-License-Identifier: EPL-2.0
/** The library pack: one zip file with its list of contents. */
package org.benchlore.pack.zip;
