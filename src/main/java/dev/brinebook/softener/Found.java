package dev.brinebook.softener;

import dev.brinebook.regeneration.Policy;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A softener and its controller as found on site.
 *
 * @param setup everything set on it, with the salt that really reaches the bed
 * @param statedDoseGramsPerLitre the dose that is meant, where the refill shows another; else the same
 * @param meter what is set on its meter, as far as it is one
 * @param supplyLitresPerMinute the most that the supply can give, if known
 */
public record Found(Setup setup, double statedDoseGramsPerLitre, Meter meter,
        OptionalDouble supplyLitresPerMinute) {

    /**
     * Settings of a meter, as far as given.
     *
     * @param hardnessMgPerL hardness set
     * @param capacityGrams capacity set
     * @param meterLitres volume that follows from both
     */
    public record Meter(OptionalDouble hardnessMgPerL, OptionalDouble capacityGrams, double meterLitres) {
    }

    public Found {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(supplyLitresPerMinute, "supplyLitresPerMinute");
    }

    public Policy policy() {
        return setup.policy();
    }
}
