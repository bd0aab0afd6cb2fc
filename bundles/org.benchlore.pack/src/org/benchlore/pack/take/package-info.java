// SPDX-License-Identifier: EPL-2.0
/** Taking a library pack in: compared first, all or nothing, with a way back. */
package org.benchlore.pack.take;
