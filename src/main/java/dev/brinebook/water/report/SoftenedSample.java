// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.water.AddedSalt;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Whether a sample was taken behind a softener. Some ground waters are soft and full of sodium by nature: the signs never make it
 * certain, only the tap does.
 *
 * @param verdict what the signs say
 * @param raw the hardness that the water had before, mg/L as CaCO3, where it looks softened
 */
public record SoftenedSample(Verdict verdict, Optional<Estimate> raw) {

    /** What the signs say. */
    public enum Verdict {
        NOT_SOFTENED, BLENDED_OR_LEAKING, LIKELY_SOFTENED, CANNOT_SAY
    }

    /** One grain per gallon, what a softener leaves; the limits are assumed. Source: [OWN-ASSUMPTION]. */
    static final double ASSUMED_SOFTENED_MG_PER_L = 17;
    static final double ASSUMED_BLENDED_MG_PER_L = 60;
    static final double ASSUMED_LEAST_ALKALINITY_MG_PER_L = 100;
    static final double ASSUMED_LEAST_SHARE = 0.9;
    /** Sodium and potassium of hard water where no neighbour says, mg/L: sodium anywhere from 3 to 20. */
    public static final Estimate ASSUMED_NATURAL_SODIUM = new Estimate(11.5, 17 / Math.sqrt(12));
    static final Estimate ASSUMED_NATURAL_POTASSIUM = new Estimate(2.5, 1.5);
    /** Two samples of one house differ by some percent in everything: the rebuilt hardness is known to a tenth at best (k = 2). */
    private static final double ASSUMED_REBUILT_SHARE = 0.05;
    /** What a softener takes out of a water or adds to it. */
    private static final Set<Parameter> CHANGED = EnumSet.of(Parameter.HARDNESS, Parameter.CALCIUM, Parameter.MAGNESIUM,
            Parameter.STRONTIUM, Parameter.BARIUM, Parameter.SODIUM, Parameter.POTASSIUM, Parameter.AMMONIUM, Parameter.IRON,
            Parameter.IRON_DISSOLVED, Parameter.MANGANESE, Parameter.MANGANESE_DISSOLVED);
    private static final double CALCIUM_CARBONATE_MG_PER_MEQ = AtomicWeights.CALCIUM_CARBONATE / 2;

    /**
     * What a sample looks like: hardness below 1 gpg beside an alkalinity that no soft water has, and cations that are nearly all of the
     * salt. {@code naturalSodium}, mg/L, is that of neighbours or of an older report.
     */
    public static SoftenedSample of(Sample sample, Estimate naturalSodium) {
        OptionalDouble hardness = sample.hardnessMgPerL();
        OptionalDouble alkalinity = sample.alkalinityMgPerL();
        if (hardness.isPresent() && hardness.getAsDouble() >= ASSUMED_BLENDED_MG_PER_L) {
            return new SoftenedSample(Verdict.NOT_SOFTENED, Optional.empty());
        }
        if (hardness.isEmpty() || alkalinity.isEmpty() || !sample.has(Parameter.SODIUM) && !sample.has(Parameter.POTASSIUM)) {
            return new SoftenedSample(Verdict.CANNOT_SAY, Optional.empty());
        }
        double sodium = sample.orZero(Parameter.SODIUM) / AtomicWeights.SODIUM;
        double potassium = sample.orZero(Parameter.POTASSIUM) / AtomicWeights.POTASSIUM;
        double cations = sodium + potassium + hardness.getAsDouble() / CALCIUM_CARBONATE_MG_PER_MEQ;
        if (!(alkalinity.getAsDouble() > ASSUMED_LEAST_ALKALINITY_MG_PER_L
                && Math.max(sodium, potassium) > ASSUMED_LEAST_SHARE * cations)) {
            return new SoftenedSample(Verdict.NOT_SOFTENED, Optional.empty());
        }
        return new SoftenedSample(hardness.getAsDouble() < ASSUMED_SOFTENED_MG_PER_L ? Verdict.LIKELY_SOFTENED
                : Verdict.BLENDED_OR_LEAKING, Optional.of(potassium > sodium
                        ? rebuilt(hardness.getAsDouble(), sample.orZero(Parameter.POTASSIUM), ASSUMED_NATURAL_POTASSIUM,
                                AddedSalt.potassiumMgPerL(1))
                        : rebuilt(hardness.getAsDouble(), sample.orZero(Parameter.SODIUM), naturalSodium, AddedSalt.sodiumMgPerL(1))));
    }

    /**
     * The sample as far as it tells of the raw water: with the rebuilt hardness and the natural sodium of a water that looks softened, and
     * without what else a softener takes out or adds. {@code behind} says that it was taken behind a softener, whatever it looks like.
     */
    public Sample rawOf(Sample sample, Estimate naturalSodium, boolean behind) {
        if (raw.isEmpty() && !behind) {
            return sample;
        }
        Sample rest = sample.without(CHANGED);
        return raw.map(hardness -> rest.with(Parameter.HARDNESS, hardness).with(Parameter.SODIUM, naturalSodium)).orElse(rest);
    }

    /**
     * Raw hardness from the salt that softening left in the water.
     *
     * <pre>H = H now + (Na − Na natural)/0.4594</pre>
     *
     * <p>H mg/L as CaCO3; Na mg/L, or potassium with 0.7813.
     * Validity: sodium that did not come with chloride since. Source: [CIAAW].
     */
    private static Estimate rebuilt(double hardnessMgPerL, double saltMgPerL, Estimate natural, double addedPerMg) {
        double raw = hardnessMgPerL + Math.max(0, saltMgPerL - natural.value()) / addedPerMg;
        return new Estimate(raw, StrictMath.hypot(ASSUMED_REBUILT_SHARE * raw, natural.standardUncertainty() / addedPerMg));
    }
}
