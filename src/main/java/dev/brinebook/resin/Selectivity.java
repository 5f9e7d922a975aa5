// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;

/**
 * How much more firmly a cation resin holds an ion than sodium, as the constant of its exchange equilibrium.
 *
 * <p>Divalent ions i, and potassium K:
 *
 * <pre>
 * K_i = y_i · C · x_Na² / (q · y_Na² · x_i)
 * K_K = y_K · x_Na / (y_Na · x_K)
 * </pre>
 *
 * <p>y, x shares of the equivalents on the resin and in the water; C and q all equivalents per litre of water and of
 * resin. C is in the first equation: in dilute water the resin takes hardness, in strong brine it gives it back.
 *
 * <p>Source: [BONNER-SMITH] relative selectivities sodium 1.98, magnesium 3.29, calcium 5.16, potassium 2.90, for 8 %
 * crosslinked resin. Limits: resins of 4 to 16 % crosslinking lie well within them.
 *
 * @param calcium K of calcium over sodium
 * @param magnesium K of magnesium over sodium
 * @param potassium K of potassium over sodium
 */
public record Selectivity(double calcium, double magnesium, double potassium) {

    public static final double MIN = 0.5;
    public static final double MAX = 10;

    /** Gel resin with 8 % crosslinking: 5.16/1.98, 3.29/1.98 and 2.90/1.98, as rounded in textbooks. */
    public static final Selectivity GEL_8_PERCENT = new Selectivity(2.6, 1.65, 1.5);

    public Selectivity {
        Guard.within(calcium, MIN, MAX, "calcium");
        Guard.within(magnesium, MIN, MAX, "magnesium");
        Guard.within(potassium, MIN, MAX, "potassium");
    }
}
