// SPDX-License-Identifier: EPL-2.0
/** Review of procedures: by another person, with what changed since; withdrawal with a reason. */
package org.benchlore.check.review;
