// SPDX-License-Identifier: EPL-2.0
package org.benchlore.pack.take;

import java.util.List;

/**
 * A file of a pack beside the library.
 *
 * @param path path below the library
 * @param title what people call its element; the path of a picture
 * @param verdict what it is to the library
 * @param reason why, where the verdict needs a reason; else empty
 * @param differences what would be different afterwards, a sentence each
 */
public record Item(String path, String title, Verdict verdict, String reason, List<String> differences) {
}
