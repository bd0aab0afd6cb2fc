// SPDX-License-Identifier: EPL-2.0
/** The library as a tree: machine, system, kind, element. */
package org.benchlore.ui.tree;
