// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.text.Message;
import java.util.List;

/**
 * A row of a table.
 *
 * @param label what the row is about
 * @param cells its cells
 */
public record Row(Message label, List<SheetCell> cells) {

    public Row {
        cells = List.copyOf(cells);
    }

    public static Row of(Message label, SheetCell... cells) {
        return new Row(label, List.of(cells));
    }
}
