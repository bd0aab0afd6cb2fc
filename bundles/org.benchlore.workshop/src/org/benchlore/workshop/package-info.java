// SPDX-License-Identifier: EPL-2.0
/** The one room that knows every service: it makes them and hands them to the command line and to the window. */
package org.benchlore.workshop;
