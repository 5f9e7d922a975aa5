// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.CsvColumn;

/**
 * A column of the caller's table.
 *
 * @param name as the header row has it
 * @param target what it holds of a request, null when nothing is read from it
 * @param repeated whether the answers repeat it
 * @param own whether it is the caller's, and not what an earlier answer said of errors
 */
record TableColumn(String name, CsvColumn target, boolean repeated, boolean own) {
}
