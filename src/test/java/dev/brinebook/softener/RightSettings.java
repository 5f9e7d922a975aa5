// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.Regeneration;
import java.util.Map;
import java.util.Optional;

/** What settings are held against in a test: the same control set right at a dose that the test names. */
final class RightSettings {

    /** By the kilogram and the cubic metre, about as in the United States. */
    static final RunningCost COST = new RunningCost(0.45, 1.87);
    private static final double LB = Softeners.POUND_PER_CUBIC_FOOT;

    private RightSettings() {
    }

    /** The path to the control set right at a dose in pounds per cubic foot. */
    static Review review(ExistingSoftener found, DesignConditions duty, double pounds) {
        return Review.path(found, at(found, duty, pounds), duty, COST);
    }

    private static SetRight at(ExistingSoftener found, DesignConditions duty, double pounds) {
        Softener softener = Review.withRightDrain(found, duty);
        if (found.policy().byClock()) {
            Regeneration each = DosedSoftener.designed(softener, pounds * LB, 12).regeneration();
            int days = ClockReview.daysThatServe(each, duty);
            SoftenerSettings setup = new SoftenerSettings(softener, pounds * LB, Map.of(), new ClockEveryDays(Math.max(1, days)),
                    MeterSettings.REGENERATION_HOUR);
            return new SetRight(setup, each, duty.year(setup.policy(), each), days > 0, Optional.empty(), Optional.empty());
        }
        return SetRight.ofMeter(DoseSearch.cheapest(softener, duty, COST, MeterStart.of(found.policy())).options().stream()
                .filter(option -> Math.abs(option.dosed().saltDoseGramsPerLitre() - pounds * LB) < 1e-6).findFirst().orElseThrow());
    }
}
