// SPDX-License-Identifier: EPL-2.0
/** The rules, one class each. */
package org.benchlore.check.rules;
