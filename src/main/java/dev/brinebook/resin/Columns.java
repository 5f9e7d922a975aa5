package dev.brinebook.resin;

/** Where the results of columns come from: worked out anew, or remembered from an equal case. */
@FunctionalInterface
public interface Columns {

    /** Works out every column anew. */
    Columns WORKED_OUT = ColumnCase::result;

    /** The result of {@link ColumnCase#result}. */
    ColumnResult of(ColumnCase column);
}
