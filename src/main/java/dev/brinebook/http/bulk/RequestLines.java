// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.api.Violation;
import java.io.IOException;
import java.util.List;

/** How requests stand on the lines of a stream. */
interface RequestLines {

    /** What comes next of a stream: a line, or a row of several; null at the end. */
    BoundedLines.Line next(BoundedLines lines) throws IOException;

    /** The line, whatever is on it: its errors come when its request is asked for. */
    SentLine read(BoundedLines.Line line);

    /** Names of what every answer repeats of its line. */
    List<String> repeats();

    /** Names of all columns, none where lines are no rows. */
    List<String> columns();

    /** The cells of a row in all those columns. */
    List<String> own(SentLine line);

    /** The column that an error belongs to, or null. */
    String columnOf(Violation violation);

    /** The errors of a line, with more about how it was written. */
    List<Violation> explain(List<Violation> violations, SentLine line);
}
