// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.assessment;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Demand;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.MeasuredEnds;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.SetRight;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import java.util.List;
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
     * @param found the existing softener there
     * @param hardnessMgPerL compensated hardness there
     * @param dailyUseLitres mean use of a day there
     * @param option what to set there
     * @param savedPerYear what converting saves there in the first year
     */
    public record End(ExistingSoftener found, double hardnessMgPerL, double dailyUseLitres, DoseChoice.Option option,
            double savedPerYear) {
    }

    /**
     * What converting saves in the first year, between two amounts.
     *
     * @param low the least that is likely
     * @param high the most
     */
    public record Saving(double low, double high) {
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

    /** By the uncertainty of what was measured of the softener; none where it is exact, or where an end has no capacity to state. */
    public static Optional<AdviceRange> ofBed(Assessment assessment, BedUncertainty uncertainty, boolean overStepBelow, Prices prices) {
        return MeasuredEnds.of(assessment.found(), uncertainty, assessment.duty()).map(ends -> new AdviceRange(
                end(assessment, ends.low(), assessment.duty(), overStepBelow, prices),
                end(assessment, ends.high(), assessment.duty(), overStepBelow, prices)));
    }

    /**
     * The saving that several ranges leave possible together.
     *
     * <pre>low = s − √Σ d_i²,   high = s + √Σ e_i²</pre>
     *
     * <p>s saving as measured, of a year; d_i and e_i how far the saving at either end of a range lies below and above it.
     * Validity: ranges of the same probability that do not depend on each other, small enough that their effects add up.
     * Source: [GUM] 5.1.3 note 2, each side by itself.
     * Deviation: a saving that is not linear has a lower and an upper part.
     */
    public static Saving saving(Assessment assessment, List<AdviceRange> ranges, boolean overStepBelow, Prices prices) {
        double measured = end(assessment, assessment.found(), assessment.duty(), overStepBelow, prices).savedPerYear();
        double below = 0;
        double above = 0;
        for (AdviceRange range : ranges) {
            below = Math.hypot(below, Math.max(0, measured - Math.min(range.low.savedPerYear, range.high.savedPerYear)));
            above = Math.hypot(above, Math.max(0, Math.max(range.low.savedPerYear, range.high.savedPerYear) - measured));
        }
        return new Saving(measured - below, measured + above);
    }

    private static End end(Assessment assessment, double hardnessFactor, double useFactor, boolean overStepBelow,
            Prices prices) {
        return end(assessment, assessment.found(), assessment.duty().with(hardnessFactor, useFactor), overStepBelow, prices);
    }

    private static End end(Assessment assessment, ExistingSoftener existing, DesignConditions there, boolean overStepBelow,
            Prices prices) {
        Softener softener = assessment.recommended().dosed().softener().withResin(existing.setup().softener().bed().resinLitres());
        DoseChoice.Option option = DoseSearch.cheapest(softener, there, assessment.cost(),
                assessment.recommended().settings().start()).best();
        Policy policy = option.settings().policy();
        SoftenerSettings found = overStepBelow && assessment.isConvertedFromRight()
                ? SetRight.of(existing, there, assessment.cost()).setup() : existing.setup();
        SoftenerSettings converted = new SoftenerSettings(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(),
                policy,
                MeterSettings.REGENERATION_HOUR);
        return new End(existing, there.hardness().totalMgPerL(), there.meanLitres(), option,
                ConvertedYears.of(found, found.policy(), converted, there).saved(prices).total());
    }

    /** Whether converting saves at one end and does not at the other. */
    public boolean flips() {
        return low.savedPerYear() > 0 != high.savedPerYear() > 0;
    }
}
