// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import java.util.List;
import java.util.Map;

/**
 * What the query says of a table.
 *
 * @param separator sign between cells; null where the header row decides
 * @param numbers form of its numbers
 * @param map the caller's columns, and the property or quantity that each is
 * @param set properties, and the value that each has in every row
 * @param pass the caller's columns that the answers repeat
 * @param passUnknown whether unknown columns are passed too, else refused
 */
record TableOptions(TableForm.Separator separator, NumberForm numbers, Map<String, String> map, Map<String, String> set,
        List<String> pass, boolean passUnknown) {
}
