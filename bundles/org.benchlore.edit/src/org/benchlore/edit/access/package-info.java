// SPDX-License-Identifier: EPL-2.0
/** What helps to write down which accesses a job needs: hours split, needs without circles. */
package org.benchlore.edit.access;
