// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** What the difference of the salt of two periods comes from. */
public final class SavingsFactors {

    /** One cause. */
    public enum Factor {
        /** More or less water, where a meter starts. */
        USE,
        /** Harder or softer raw water, where a meter starts. */
        HARDNESS,
        /** More or fewer regenerations for the same water. */
        COUNT,
        /** More or less salt in each; in the count where doses are not known. */
        DOSE,
        /** Dearer or cheaper salt. */
        PRICE
    }

    /** Less than this is rounding. */
    private static final double ROUNDING = 1e-12;

    private SavingsFactors() {
    }

    /**
     * Salt a day after less that before, by cause.
     *
     * <pre>
     * Δ_x = L(r_a, r_b) ln(x_a / x_b),   L(a, b) = (a − b) / ln(a / b),   r = Π x
     * </pre>
     *
     * <p>r salt a day as it was used; x its factors: dose, regenerations for the same water, use, hardness. The causes add up to the
     * difference. Use and hardness move a meter alone.
     * Validity: r above 0. Source: [ANG-2005] logarithmic mean Divisia index. Deviation: none.
     *
     * @return kg a day; below 0 for less salt
     */
    public static Map<Factor, Double> salt(SavingsPeriod before, SavingsPeriod after) {
        return parts(before, after, SaltUsed.of(before).kilograms() / before.days(), SaltUsed.of(after).kilograms() / after.days(), 1, 1);
    }

    /** The same of its cost, with prices of a kilogram of both periods: money a day. */
    public static Map<Factor, Double> cost(SavingsPeriod before, SavingsPeriod after, double priceBefore, double priceAfter) {
        return parts(before, after, priceBefore * SaltUsed.of(before).kilograms() / before.days(),
                priceAfter * SaltUsed.of(after).kilograms() / after.days(), priceBefore, priceAfter);
    }

    private static Map<Factor, Double> parts(SavingsPeriod before, SavingsPeriod after, double rateBefore, double rateAfter,
            double priceBefore, double priceAfter) {
        Map<Factor, Double> logs = new EnumMap<>(Factor.class);
        boolean meter = after.startedBy().byWater();
        put(logs, Factor.USE, meter ? log(after.litresPerDay(), before.litresPerDay()) : 0);
        put(logs, Factor.HARDNESS, meter ? log(after.hardness(), before.hardness()) : 0);
        put(logs, Factor.DOSE, before.dose().isPresent() && after.dose().isPresent() && before.regenerations().isPresent()
                && after.regenerations().isPresent() ? StrictMath.log(dose(after) / dose(before)) : 0);
        put(logs, Factor.PRICE, StrictMath.log(priceAfter / priceBefore));
        double all = StrictMath.log(rateAfter / rateBefore);
        logs.put(Factor.COUNT, all - logs.values().stream().mapToDouble(Double::doubleValue).sum());
        double mean = Math.abs(all) < ROUNDING ? rateBefore : (rateAfter - rateBefore) / all;
        logs.replaceAll((factor, log) -> mean * log);
        return logs;
    }

    /** Salt really given in each regeneration. */
    private static double dose(SavingsPeriod period) {
        return SaltUsed.of(period).kilograms() / period.count();
    }

    private static double log(OptionalDouble after, OptionalDouble before) {
        return after.isPresent() && before.isPresent() ? StrictMath.log(after.getAsDouble() / before.getAsDouble()) : 0;
    }

    private static void put(Map<Factor, Double> logs, Factor factor, double log) {
        if (Math.abs(log) > ROUNDING) {
            logs.put(factor, log);
        }
    }
}
