// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import java.util.List;

/** The query parameters of streams. Their names on the wire are those of the constants. */
public enum BulkParameter {

    MODE("`calculate`, the default, or `check`, a dry run: every line is read and checked, nothing is calculated, only lines with "
            + "errors are answered, and a last line or row sums up.", List.of("calculate", "check"), "check"),
    ONLY("`faulty` answers only lines with errors, in a form to correct and send again: rows with your own columns and the columns "
            + "problem.…, which are ignored when they are sent, but for problem.row: empty it when its row is "
            + "corrected; or lines with your request, id and the problem.", List.of("faulty"),
            "faulty"),
    ANSWER("`whileUploading`, the default, or `afterUpload` for clients that write everything before they read: the answers begin after "
            + "the last line. The body then has at most 100 MiB.", List.of("whileUploading", "afterUpload"), "afterUpload"),
    FROM("Number of the first line or row to answer, to continue after a break. Those before it are counted and skipped; each may be "
            + "sent as an empty line. From 2 on the answer has no header row, so that it continues the answers already there.",
            Kind.WHOLE_NUMBER, "1201"),
    SEPARATOR("Between the cells of the table. Without it the header row decides, where only one of the three gives known columns.",
            Kind.OF_ANSWERS_TOO, List.of("comma", "semicolon", "tab"), "semicolon"),
    DECIMAL("The decimal sign of the table, of answers too.", Kind.OF_ANSWERS_TOO, List.of("point", "comma"), "comma"),
    THOUSANDS("The sign between groups of three digits that numbers of the table may have. None by default. Answers have none.",
            Kind.OF_TABLE, List.of("none", "comma", "point", "space", "apostrophe"), "point"),
    MAP("A column of yours and the property that it holds, with a colon between. A quantity means its number. Repeat it for each "
            + "column.", Kind.REPEATED, List.of(), "Hardness (lab):water.hardness"),
    SET("A property and its value in every row, with a colon between. A unit is set only where its number is given. "
            + "Numbers are written as in cells. Repeat it for each "
            + "property.", Kind.REPEATED, List.of(), "water.hardness.unit:gpg"),
    PASS("A column of yours that every answer repeats. Repeat it for each column.", Kind.REPEATED, List.of(), "Customer"),
    UNKNOWN_COLUMNS("`refuse`, the default, or `pass`: unknown columns are repeated in the answers and listed in the header "
            + "Passed-Columns.", Kind.OF_TABLE, List.of("refuse", "pass"), "pass"),
    DETAIL("", Kind.OF_OPERATION, List.of(), ""),
    FIELDS("", Kind.OF_OPERATION, List.of(), "");

    /** Greatest number of a line. */
    public static final long LAST_LINE = 1_000_000_000;

    private enum Kind {
        CHOICE, WHOLE_NUMBER, OF_TABLE, OF_ANSWERS_TOO, REPEATED, OF_OPERATION
    }

    private final String description;
    private final Kind kind;
    private final List<String> choices;
    private final String example;

    BulkParameter(String description, Kind kind, List<String> choices, String example) {
        this.description = description;
        this.kind = kind;
        this.choices = choices;
        this.example = example;
    }

    BulkParameter(String description, List<String> choices, String example) {
        this(description, Kind.CHOICE, choices, example);
    }

    BulkParameter(String description, Kind kind, String example) {
        this(description, kind, List.of(), example);
    }

    /** What it does. */
    public String description() {
        return description;
    }

    /** Its allowed values, none where they are no closed list. */
    public List<String> choices() {
        return choices;
    }

    /** An example, as text that is not yet encoded. */
    public String example() {
        return example;
    }

    /** Whether it may be given more than once. */
    public boolean repeated() {
        return kind == Kind.REPEATED;
    }

    /** Whether it says something of a table. */
    public boolean ofTable() {
        return kind == Kind.OF_TABLE || kind == Kind.OF_ANSWERS_TOO || kind == Kind.REPEATED;
    }

    /** Whether it also says how a table of answers is written. */
    public boolean ofAnswers() {
        return kind == Kind.OF_ANSWERS_TOO;
    }

    /** Whether it is a parameter of every operation, which the contract describes there. */
    boolean ofOperation() {
        return kind == Kind.OF_OPERATION;
    }

    /** Whether its values are whole numbers. */
    boolean isWholeNumber() {
        return kind == Kind.WHOLE_NUMBER;
    }
}
