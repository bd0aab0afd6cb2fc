// SPDX-License-Identifier: EPL-2.0
/** Questions as people put them in words, and answers that terminal and window show alike. */
package org.benchlore.torque.answer;
