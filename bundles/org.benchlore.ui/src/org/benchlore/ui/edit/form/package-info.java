// SPDX-License-Identifier: EPL-2.0
/** Forms over the model: which fields a kind has and in which order, and one widget for each type of field. */
package org.benchlore.ui.edit.form;
