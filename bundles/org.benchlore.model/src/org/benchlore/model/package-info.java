// SPDX-License-Identifier: EPL-2.0
/** The book's model: generated interfaces of its elements, and the rules on identity, kinds and simple forms. */
package org.benchlore.model;
