// SPDX-License-Identifier: EPL-2.0
/** Starts the window: application, perspective, menus of the platform. */
package org.benchlore.app;
