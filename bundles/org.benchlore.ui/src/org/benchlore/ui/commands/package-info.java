// SPDX-License-Identifier: EPL-2.0
/** Handlers of the commands in plugin.xml: each reads the event, calls one service and returns. */
package org.benchlore.ui.commands;
