// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.assessment;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Demand;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.SetRight;
import dev.brinebook.softener.SoftenerSettings;
import java.util.Map;
import java.util.Optional;

/**
 * What an uncertain input does to the advice: the whole choice at either end of it.
 *
 * @param low where the input is as low as it may be
 * @param high where it is as high
 */
public record AdviceRange(End low, End high) {

    /**
     * One end.
     *
     * @param hardnessMgPerL compensated hardness there
     * @param dailyUseLitres mean use of a day there
     * @param option what to set there
     * @param savedPerYear what converting saves there in the first year
     */
    public record End(double hardnessMgPerL, double dailyUseLitres, DoseChoice.Option option, double savedPerYear) {
    }

    /**
     * By the uncertainty of the hardness test; none where the test is exact, or where nothing would be left to soften.
     *
     * @param overStepBelow whether converting is compared with the step below it, rather than with the present settings
     */
    public static Optional<AdviceRange> ofTest(Assessment assessment, boolean overStepBelow, Prices prices) {
        DesignConditions duty = assessment.duty();
        double share = duty.water().hardnessUncertaintyMgPerL() / duty.loadMgPerL();
        return share > 0 && share < 1 ? Optional.of(new AdviceRange(end(assessment, 1 - share, 1, overStepBelow, prices),
                end(assessment, 1 + share, 1, overStepBelow, prices))) : Optional.empty();
    }

    /**
     * By the uncertainty of the use; none where it is exact, or where there is none.
     *
     * @param share of the mean use, 0 to {@value Demand#MAX_USE_UNCERTAINTY_SHARE}
     */
    public static Optional<AdviceRange> ofUse(Assessment assessment, double share, boolean overStepBelow, Prices prices) {
        Guard.within(share, 0, Demand.MAX_USE_UNCERTAINTY_SHARE, "share");
        return share > 0 && assessment.duty().meanLitres() > 0 ? Optional.of(new AdviceRange(
                end(assessment, 1, 1 - share, overStepBelow, prices),
                end(assessment, 1, 1 + share, overStepBelow, prices))) : Optional.empty();
    }

    private static End end(Assessment assessment, double hardnessFactor, double useFactor, boolean overStepBelow,
            Prices prices) {
        DesignConditions there = assessment.duty().with(hardnessFactor, useFactor);
        DoseChoice.Option option = DoseChoice.cheapest(assessment.recommended().dosed().softener(), there, assessment.cost(),
                assessment.recommended().settings().start()).best();
        Policy policy = option.settings().policy();
        SoftenerSettings found = overStepBelow && assessment.isConvertedFromRight()
                ? SetRight.of(assessment.found(), there, assessment.cost()).setup() : assessment.found().setup();
        SoftenerSettings converted = new SoftenerSettings(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(),
                policy,
                MeterSettings.REGENERATION_HOUR);
        return new End(there.hardness().totalMgPerL(), there.meanLitres(), option,
                ConvertedYears.of(found, found.policy(), converted, there).saved(prices).total());
    }

    /** Whether converting saves at one end and does not at the other. */
    public boolean flips() {
        return low.savedPerYear() > 0 != high.savedPerYear() > 0;
    }
}
