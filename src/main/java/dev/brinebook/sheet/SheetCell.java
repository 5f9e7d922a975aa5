// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

/**
 * One cell of a sheet.
 *
 * @param at JSON pointer into the answer that it is taken from; null where nothing is
 * @param value a quantity, a number or a message, written as the answer has it
 */
public record SheetCell(String at, Object value) {
}
