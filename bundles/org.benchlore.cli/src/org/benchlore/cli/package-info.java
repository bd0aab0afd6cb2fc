// SPDX-License-Identifier: EPL-2.0
/** The command line: one class a command, over the services of the workshop. */
package org.benchlore.cli;
