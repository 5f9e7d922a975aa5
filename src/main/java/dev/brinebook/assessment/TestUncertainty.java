package dev.brinebook.assessment;

import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Setup;
import java.util.Map;
import java.util.Optional;

/**
 * What the uncertainty of the hardness test does to the advice: the whole choice at either end of it.
 *
 * @param low where the water is as soft as the test allows
 * @param high where it is as hard
 */
public record TestUncertainty(End low, End high) {

    /**
     * One end.
     *
     * @param hardnessMgPerL compensated hardness there
     * @param option what to set there
     * @param savedPerYear what converting saves there in the first year
     */
    public record End(double hardnessMgPerL, DoseChoice.Option option, double savedPerYear) {
    }

    /** The ends of an assessment; none where the test is taken as exact, or where nothing would be left to soften. */
    public static Optional<TestUncertainty> of(Assessment assessment, Prices prices) {
        Duty duty = assessment.duty();
        double share = duty.water().hardnessUncertaintyMgPerL() / duty.hardness().totalMgPerL();
        return share > 0 && share < 1 ? Optional.of(new TestUncertainty(end(assessment, 1 - share, prices),
                end(assessment, 1 + share, prices))) : Optional.empty();
    }

    private static End end(Assessment assessment, double factor, Prices prices) {
        Duty there = assessment.duty().with(factor, 1);
        DoseChoice.Option option = DoseChoice.cheapest(assessment.recommended().dosed().softener(), there, assessment.cost()).best();
        Policy policy = option.settings().policy();
        Setup found = assessment.found().setup();
        Setup converted = new Setup(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(), policy,
                MeterSettings.REGENERATION_HOUR);
        return new End(there.hardness().totalMgPerL(), option,
                ConvertedYears.of(found, found.policy(), converted, there).saved(prices).total());
    }

    /** Whether converting saves at one end and does not at the other. */
    public boolean flips() {
        return low.savedPerYear() > 0 != high.savedPerYear() > 0;
    }
}
