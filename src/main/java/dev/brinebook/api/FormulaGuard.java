// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.util.regex.Pattern;

/** Keeps spreadsheets from taking a text of a table for a formula. */
public final class FormulaGuard {

    /** How the contract says it. */
    public static final String DESCRIPTION = "begins with = + - @ or ' gets an apostrophe in front, so that no spreadsheet reads it as "
            + "a formula.";

    /**
     * What a spreadsheet may take for the start of a formula, the wide forms too; and the apostrophe that guards it, so
     * that two texts never become one.
     */
    private static final String GUARDED = "=+-@'\uFF1D\uFF0B\uFF0D\uFF20";

    /** A number, also of a telephone: a formula that calls or refers to something needs other signs. */
    private static final Pattern NUMBER = Pattern.compile("[+-][\\d\\p{Zs}.,/()-]*");

    private FormulaGuard() {
    }

    /** The text as a cell may hold it. Numbers are no texts: they may be below zero. */
    public static String of(String text) {
        return isGuarded(text) ? "'" + text : text;
    }

    private static boolean isGuarded(String text) {
        return !text.isEmpty() && (GUARDED.indexOf(text.charAt(0)) >= 0 || Character.isISOControl(text.charAt(0)));
    }

    /** The text of a cell that is read: without the apostrophe that keeps a spreadsheet from taking it for a formula. */
    public static String removedFrom(String cell) {
        boolean guard = cell.startsWith("'") && !cell.startsWith("''") && isGuarded(cell.substring(1));
        return guard ? cell.substring(1) : cell;
    }

    /**
     * A text of a caller's own cell that is given back: numbers, of telephones too, and texts with an apostrophe in front, stay as they
     * are.
     */
    public static String ofPassed(String text) {
        return text.startsWith("'") || NUMBER.matcher(text).matches() ? text : of(text);
    }
}
