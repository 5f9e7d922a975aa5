// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

/** Separator between messages in a row. */
public enum Joint implements Localizable {
    /** Sentences. */
    SPACE,
    /** Members of a list. */
    COMMA,
    /** Members of a list that hold commas, or clauses. */
    SEMICOLON,
    /** The last two members of a list of all. */
    AND,
    /** The last two members of a list of which one is meant. */
    OR;

    private final String textId = Localizable.idOf("joint", this);

    /** Whether it is used before the last member only. */
    boolean isBeforeLast() {
        return this == AND || this == OR;
    }

    @Override
    public String textId() {
        return textId;
    }
}
