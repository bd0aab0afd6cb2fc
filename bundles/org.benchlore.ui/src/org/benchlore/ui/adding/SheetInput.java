// SPDX-License-Identifier: EPL-2.0
package org.benchlore.ui.adding;

import java.util.List;

/**
 * What stands in the fields of the dialog.
 *
 * @param photo which of the job's pictures, -1 for none of them
 * @param photoFile a picture as a file, may be empty
 * @param found what was found, may be empty
 * @param advice what the shop advises, may be empty
 * @param declined ids of what was declined
 * @param validUntil a day as typed, may be empty
 * @param first file of the first sheet, may be empty
 */
record SheetInput(int photo, String photoFile, String found, String advice, List<String> declined, String validUntil,
        String first) {
}
