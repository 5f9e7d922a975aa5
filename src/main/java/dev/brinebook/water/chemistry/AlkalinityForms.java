// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;

/**
 * What the alkalinity consists of, by its two titrations; all mg/L as CaCO3.
 *
 * <pre>
 * P = 0: HCO3 = T.  P &lt; T/2: CO3 = 2 P, HCO3 = T − 2 P.  P &gt; T/2: OH = 2 P − T, CO3 = 2 (T − P).
 * </pre>
 *
 * <p>P alkalinity to pH 8.3; T total alkalinity.
 * Validity: no other acids; the three parts add up to T.
 * Source: [SM2320].
 *
 * @param bicarbonateMgPerL bicarbonate
 * @param carbonateMgPerL carbonate
 * @param hydroxideMgPerL hydroxide
 */
public record AlkalinityForms(double bicarbonateMgPerL, double carbonateMgPerL, double hydroxideMgPerL) {

    /** The parts; {@code toPh83MgPerL} is at most the total. */
    public static AlkalinityForms of(double toPh83MgPerL, double totalMgPerL) {
        double p = Guard.within(toPh83MgPerL, 0, Guard.notNegative(totalMgPerL, "totalMgPerL"), "toPh83MgPerL");
        return p <= totalMgPerL / 2 ? new AlkalinityForms(totalMgPerL - 2 * p, 2 * p, 0)
                : new AlkalinityForms(0, 2 * (totalMgPerL - p), 2 * p - totalMgPerL);
    }
}
