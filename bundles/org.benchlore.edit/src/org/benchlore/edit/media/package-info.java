// SPDX-License-Identifier: EPL-2.0
/** Pictures and drawings on their way into a library: told by content, cleaned before anybody sees them. */
package org.benchlore.edit.media;
