// SPDX-License-Identifier: EPL-2.0
/**
 * Which accesses to open and which ways to take at the least cost. Pure: ids and whole cents, no library.
 *
 * <p>What a plan is, exactly:
 * <ol>
 * <li>An access <em>holds</em> while it is open or while an open access covers it; covering passes on.</li>
 * <li>A set of open accesses is <em>permissible</em> if its accesses can be opened one by one from nothing, each when
 * every need of it holds (any one access of a need will do), and if no two of them, nor what they cover, are said to be
 * not with each other. Needs must hold as long as the access is open.</li>
 * <li>A plan is a row of sittings. In each sitting a permissible set is open and at least one target is done whose way's
 * needs hold. Between two sittings first everything is closed that does not stay open, and what stays is a permissible
 * set by itself; then the rest is opened. Before the first sitting that is open which is said to be open; after the last
 * one everything is closed.</li>
 * <li>A way that needs nothing open is done in no sitting. A target that must come before another one is done in the
 * same sitting or an earlier one.</li>
 * <li>Every access that is opened or was open, every target and every closing work may ask for closing works; each is
 * done once.</li>
 * <li>Cost = strip and refit of every opening, refit of what was open at the start, the chosen way of every target, each
 * closing work once. The cheapest plan is taken; which one among equals follows from the ids alone.</li>
 * </ol>
 */
package org.benchlore.plan.search;
