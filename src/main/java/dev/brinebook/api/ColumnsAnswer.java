package dev.brinebook.api;

import java.util.List;

@About("Every column that a table of requests of an operation may have, in the order of the template.")
public record ColumnsAnswer(
        @Property(value = "The operation.", example = "\"compensateHardness\"") String calculator,
        @Property("The columns.") List<ColumnAnswer> columns) {

    public static ColumnsAnswer of(Operation<?, ?> operation) {
        return new ColumnsAnswer(operation.id(), Columns.ofRequest(operation.requestType()).stream().map(ColumnAnswer::of)
                .toList());
    }
}
