package dev.brinebook.sheet;

import dev.brinebook.wording.Message;
import java.util.List;

/**
 * A row of a table.
 *
 * @param label what the row is about
 * @param cells what stands in it
 */
public record Row(Message label, List<Shown> cells) {

    public Row {
        cells = List.copyOf(cells);
    }

    public static Row of(Message label, Shown... cells) {
        return new Row(label, List.of(cells));
    }
}
