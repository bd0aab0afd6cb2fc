// SPDX-License-Identifier: EPL-2.0
/** Finding elements by what people type. The index is a cache: everything in it stands in the library's files. */
package org.benchlore.search;
