// SPDX-License-Identifier: EPL-2.0
/**
 * What the shop's own jobs and notes say: counts over the catalogue's facts, kept up with every change, and how often
 * a part that was left in brings a unit back. Nothing here knows of plans or prices.
 */
package org.benchlore.evidence;
