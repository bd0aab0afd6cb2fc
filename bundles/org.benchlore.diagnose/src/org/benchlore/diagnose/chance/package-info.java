// SPDX-License-Identifier: EPL-2.0
/** How likely faults are: records and arithmetic only, nothing of a library. */
package org.benchlore.diagnose.chance;
