// SPDX-License-Identifier: EPL-2.0
/** Procedure packs: what goes along, what stays out. */
package org.benchlore.pack;
