// SPDX-License-Identifier: EPL-2.0
/** From a complaint and codes to causes with their evidence, the next check, and the ladder after work that did not cure. */
package org.benchlore.diagnose;
