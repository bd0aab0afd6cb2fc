// SPDX-License-Identifier: EPL-2.0
/** Fault codes in every written form, their canonical keys, and what the numbering itself tells about them. */
package org.benchlore.terms;
