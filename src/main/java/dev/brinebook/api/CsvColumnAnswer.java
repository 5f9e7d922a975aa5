// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

@SchemaDescription("A column of a table of requests.")
public record CsvColumnAnswer(
        @Property(value = "Name in the header: the path of property names, joined by dots.",
                example = "\"water.hardness.value\"") String name,
        @Property(value = "Content of the cells.", example = "\"Tested hardness, from calcium and magnesium. The number.\"")
        String description,
        @Property("Format of the cells.") Written written,
        @Property(value = "Whether every request needs it. Errors of a line name any other column that its request needs.",
                example = "false") Boolean required,
        @Property(value = "Allowed values.", optional = "when the allowed values are not a range "
                + "or a list", example = "\"from 0 to 10000 mg/L\"")
        String allowed,
        @Property(value = "Default for an empty cell, in words.", optional = "when there is no default", example = "\"0 gpg\"")
        String fallback) {

    /** How a cell is written. */
    public enum Written {
        NUMBER, TRUE_OR_FALSE, TEXT, NUMBERS_WITH_SEMICOLONS_BETWEEN, TEXTS_WITH_SEMICOLONS_BETWEEN
    }

    public static CsvColumnAnswer of(CsvColumn column) {
        return new CsvColumnAnswer(column.name(), column.description(), written(column), column.required(),
                column.allowed().orElse(null), column.fallback().orElse(null));
    }

    private static Written written(CsvColumn column) {
        if (column.type() == Boolean.class) {
            return Written.TRUE_OR_FALSE;
        }
        if (column.list()) {
            return column.isNumber() ? Written.NUMBERS_WITH_SEMICOLONS_BETWEEN : Written.TEXTS_WITH_SEMICOLONS_BETWEEN;
        }
        return column.isNumber() ? Written.NUMBER : Written.TEXT;
    }
}
