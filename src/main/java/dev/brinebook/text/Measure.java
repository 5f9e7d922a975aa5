// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import java.math.BigDecimal;

/**
 * A number with its unit inside a text, rounded already.
 *
 * @param value number, in plain notation
 * @param unit symbol of the unit as the contract has it, such as {@code gpg}; each language writes it in its own way
 */
public record Measure(BigDecimal value, String unit) {
}
