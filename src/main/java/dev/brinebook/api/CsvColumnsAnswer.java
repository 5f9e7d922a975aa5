// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.util.List;

@SchemaDescription("All columns of a table of requests of an operation, in the order of the template.")
public record CsvColumnsAnswer(
        @Property(value = "The operation.", example = "\"compensateHardness\"") String calculator,
        @Property(value = "The columns.", maxItems = CsvColumnsAnswer.MOST_COLUMNS) List<CsvColumnAnswer> columns) {

    static final int MOST_COLUMNS = 1_000;

    public static CsvColumnsAnswer of(Operation<?, ?> operation) {
        return new CsvColumnsAnswer(operation.id(), CsvColumns.ofRequest(operation.requestType()).stream().map(CsvColumnAnswer::of)
                .toList());
    }
}
