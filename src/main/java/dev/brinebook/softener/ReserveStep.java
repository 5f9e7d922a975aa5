// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.SmallestReserve;

/** How a controller takes the reserve, and in which steps. */
public sealed interface ReserveStep {

    double MIN_PERCENT = 0.5;
    double MAX_PERCENT = 50;
    double MIN_DAYS = 0.1;
    double MAX_DAYS = 7;

    /**
     * One step.
     *
     * @param meterLitres water from one regeneration to the next
     * @param meanLitres use of a mean day
     */
    double litres(double meterLitres, double meanLitres);

    /** A volume. */
    record Volume(double stepLitres) implements ReserveStep {

        public Volume {
            Guard.within(stepLitres, SmallestReserve.MIN_STEP_LITRES, SmallestReserve.MAX_STEP_LITRES, "stepLitres");
        }

        @Override
        public double litres(double meterLitres, double meanLitres) {
            return stepLitres;
        }
    }

    /** A share of what the meter counts. */
    record Percent(double stepPercent) implements ReserveStep {

        public Percent {
            Guard.within(stepPercent, MIN_PERCENT, MAX_PERCENT, "stepPercent");
        }

        @Override
        public double litres(double meterLitres, double meanLitres) {
            return wholeStepsOf(stepPercent / 100 * meterLitres);
        }
    }

    /** Mean days of use. */
    record MeanDays(double stepDays) implements ReserveStep {

        public MeanDays {
            Guard.within(stepDays, MIN_DAYS, MAX_DAYS, "stepDays");
        }

        @Override
        public double litres(double meterLitres, double meanLitres) {
            return wholeStepsOf(stepDays * meanLitres);
        }
    }

    /** The smallest multiple of the step that is not below the least one; without use, the largest step. */
    private static double wholeStepsOf(double litres) {
        return litres > 0 ? litres * Math.max(1, Math.ceil(SmallestReserve.MIN_STEP_LITRES / litres))
                : SmallestReserve.MAX_STEP_LITRES;
    }
}
