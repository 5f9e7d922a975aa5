package dev.brinebook.sheet;

/**
 * What stands in one place of a sheet.
 *
 * @param at JSON pointer into the answer that it is taken from; null where nothing is
 * @param value a quantity, a number or a message, written as the answer has it
 */
public record Shown(String at, Object value) {
}
