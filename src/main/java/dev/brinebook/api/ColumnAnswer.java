package dev.brinebook.api;

@About("A column that a table of requests may have.")
public record ColumnAnswer(
        @Property(value = "Its name in the header: the names of the properties that lead to it, with dots between.",
                example = "\"water.hardness.value\"") String name,
        @Property(value = "What its cells hold.", example = "\"Hardness as tested, of calcium and magnesium. The number.\"")
        String description,
        @Property("How its cells are written.") Written written,
        @Property(value = "Whether every request needs it. Which others a request needs is told of each line.",
                example = "false") Boolean required,
        @Property(value = "What is allowed.", optional = "when it is no range or list", example = "\"from 0 to 10000 mg/L\"")
        String allowed,
        @Property(value = "What is taken for an empty cell, in words.", optional = "when nothing is", example = "\"0 gpg\"")
        String fallback) {

    /** How a cell is written. */
    public enum Written {
        NUMBER, TRUE_OR_FALSE, TEXT, NUMBERS_WITH_SEMICOLONS_BETWEEN, TEXTS_WITH_SEMICOLONS_BETWEEN
    }

    public static ColumnAnswer of(Column column) {
        return new ColumnAnswer(column.name(), column.description(), written(column), column.required(),
                column.allowed().orElse(null), column.fallback().orElse(null));
    }

    private static Written written(Column column) {
        if (column.type() == Boolean.class) {
            return Written.TRUE_OR_FALSE;
        }
        if (column.list()) {
            return column.isNumber() ? Written.NUMBERS_WITH_SEMICOLONS_BETWEEN : Written.TEXTS_WITH_SEMICOLONS_BETWEEN;
        }
        return column.isNumber() ? Written.NUMBER : Written.TEXT;
    }
}
