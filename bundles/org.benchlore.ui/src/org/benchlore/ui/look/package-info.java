// SPDX-License-Identifier: EPL-2.0
/** Icons, colours, words for kinds and states, and light or dark. */
package org.benchlore.ui.look;
