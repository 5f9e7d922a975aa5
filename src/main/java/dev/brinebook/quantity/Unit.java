// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

/**
 * A unit of one kind of quantity. Every enum of units owns its exact factors to the one base unit of its kind.
 *
 * <p>Not a general unit system: kinds cannot be multiplied, and nothing converts between kinds.
 */
public interface Unit {

    /**
     * What a unit is.
     *
     * @param symbol how it is written on the wire, such as {@code gpg}
     * @param ucum its UCUM code, or an empty text where it has none
     * @param exact base units of its kind in one of it, as a decimal too
     * @param factor the same as a binary number, by which is calculated
     * @param meaning what it is, in words
     */
    record Definition(String symbol, String ucum, Factor exact, double factor, String meaning) {

        Definition(String symbol, String ucum, Factor exact, String meaning) {
            this(symbol, ucum, exact, exact.binary(), meaning);
        }
    }

    Definition definition();

    default String symbol() {
        return definition().symbol();
    }

    /** {@code value} of this unit in the base unit. */
    default double toBase(double value) {
        return value * definition().factor();
    }

    /** {@code base} of the base unit in this unit. */
    default double fromBase(double base) {
        return base / definition().factor();
    }
}
