// SPDX-License-Identifier: EPL-2.0
/** In which order to check: records and arithmetic only, nothing of a library. */
package org.benchlore.diagnose.order;
