// SPDX-License-Identifier: EPL-2.0
/**
 * The library folder: loading, the catalogue with its facts, saving and locking. Loaded files are snapshots that
 * nobody changes.
 */
package org.benchlore.store;
