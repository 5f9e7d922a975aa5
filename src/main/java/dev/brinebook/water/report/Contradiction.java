// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.Hardness;
import dev.brinebook.water.chemistry.CarbonateSystem;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Two results of one sample that cannot both be right. Limits are assumed where none is published: chlorine takes part in
 * [CP-CHLORINE-IRON], iron in air in [STUMM-LEE-1961], titrations in [SM2320]. Source: [OWN-ASSUMPTION].
 */
public enum Contradiction implements Localizable {
    /** Free chlorine beside what it would have used up. Manganese may linger for hours. */
    CHLORINE_BESIDE_IRON(sample -> above(sample, Parameter.FREE_CHLORINE, 0.2)
            && (iron(sample) > 0.1 || above(sample, Parameter.MANGANESE, 0.05) || above(sample, Parameter.HYDROGEN_SULFIDE, 0.05)),
            Parameter.FREE_CHLORINE, Parameter.IRON),
    DISSOLVED_IRON_BESIDE_OXYGEN(sample -> above(sample, Parameter.IRON_DISSOLVED, 0.3) && above(sample, Parameter.OXYGEN, 1)
            && above(sample, Parameter.PH, 7.5)
            && IronOxidation.halfLifeMinutes(sample.orZero(Parameter.PH), Saturation.celsius(sample)) < 5, Parameter.IRON_DISSOLVED,
            Parameter.OXYGEN),
    /** Bacteria use nitrate up before iron dissolves and sulfide forms: two depths, a broken casing, or two samples. */
    NITRATE_BESIDE_IRON(sample -> sample.orZero(Parameter.NITRATE) > 5 * MolarMass.grams("NO3") / MolarMass.grams("N")
            && (iron(sample) > 1 || above(sample, Parameter.HYDROGEN_SULFIDE, 0.1)), Parameter.NITRATE, Parameter.IRON),
    CARBONATE_AT_LOW_PH(sample -> (above(sample, Parameter.CARBONATE, 0) || above(sample, Parameter.ALKALINITY_TO_PH_8, 0))
            && below(sample, Parameter.PH, 8.2), Parameter.CARBONATE, Parameter.PH),
    HYDROXIDE_BESIDE_BICARBONATE(sample -> above(sample, Parameter.HYDROXIDE, 0) && above(sample, Parameter.BICARBONATE, 0),
            Parameter.HYDROXIDE, Parameter.BICARBONATE),
    ALKALINITY_IN_ACID(sample -> sample.alkalinityMgPerL().orElse(0) > 5 && below(sample, Parameter.PH, 4.5), Parameter.ALKALINITY,
            Parameter.PH),
    TO_PH_8_ABOVE_TOTAL(sample -> sample.has(Parameter.ALKALINITY)
            && sample.orZero(Parameter.ALKALINITY_TO_PH_8) > sample.orZero(Parameter.ALKALINITY), Parameter.ALKALINITY_TO_PH_8,
            Parameter.ALKALINITY),
    CARBON_DIOXIDE_NOT_OF_PH(sample -> isOff(sample.value(Parameter.CARBON_DIOXIDE), Saturation.carbonate(sample)
            .map(system -> OptionalDouble.of(system.carbonDioxideMgPerL())).orElse(OptionalDouble.empty())),
            Parameter.CARBON_DIOXIDE, Parameter.PH),
    /** Hardness is a part of the cations. */
    HARDNESS_ABOVE_CATIONS(sample -> sample.composition().missing().isEmpty() && sample.orZero(Parameter.HARDNESS)
            > 1.03 * sample.composition().cationsMeqPerL() * MolarMass.grams("CaCO3") / 2, Parameter.HARDNESS, Parameter.CALCIUM),
    HARDNESS_ABOVE_SOLIDS(sample -> sample.has(Parameter.DISSOLVED_SOLIDS)
            && sample.hardnessMgPerL().orElse(0) > 1.2 * sample.orZero(Parameter.DISSOLVED_SOLIDS), Parameter.HARDNESS,
            Parameter.DISSOLVED_SOLIDS),
    CALCIUM_ABOVE_HARDNESS(sample -> sample.has(Parameter.HARDNESS)
            && Hardness.fromIonsMgPerL(sample.orZero(Parameter.CALCIUM), 0) > 1.03 * sample.orZero(Parameter.HARDNESS)
            && sample.orZero(Parameter.CALCIUM) > 1, Parameter.CALCIUM, Parameter.HARDNESS),
    DISSOLVED_IRON_ABOVE_ALL(sample -> sample.has(Parameter.IRON)
            && sample.orZero(Parameter.IRON_DISSOLVED) > 1.1 * sample.orZero(Parameter.IRON), Parameter.IRON_DISSOLVED, Parameter.IRON),
    DISSOLVED_MANGANESE_ABOVE_ALL(sample -> sample.has(Parameter.MANGANESE)
            && sample.orZero(Parameter.MANGANESE_DISSOLVED) > 1.1 * sample.orZero(Parameter.MANGANESE), Parameter.MANGANESE_DISSOLVED,
            Parameter.MANGANESE),
    /** Water does not stay so far above saturation in the ground: the carbon dioxide escaped before the pH was read. */
    PH_ABOVE_SATURATION(sample -> Saturation.carbonate(sample).map(CarbonateSystem::calciteIndex).orElse(OptionalDouble.empty())
            .orElse(0) > 0.8, Parameter.PH,
            Parameter.CALCIUM),
    CHLORIDE_WITHOUT_SODIUM(sample -> sample.has(Parameter.SODIUM) && below(sample, Parameter.SODIUM, 2)
            && above(sample, Parameter.CHLORIDE, 100), Parameter.SODIUM, Parameter.CHLORIDE);

    private static final double ASSUMED_MOST_FACTOR = 1.5;

    private final Predicate<Sample> contradicts;
    private final List<Parameter> pair;

    Contradiction(Predicate<Sample> contradicts, Parameter one, Parameter other) {
        this.contradicts = contradicts;
        this.pair = List.of(one, other);
    }

    /** The two results, at least one of which is wrong or of another sample. */
    public List<Parameter> pair() {
        return pair;
    }

    /** All contradictions of a sample. */
    public static List<Contradiction> of(Sample sample) {
        return Arrays.stream(values()).filter(contradiction -> contradiction.contradicts.test(sample)).toList();
    }

    private static boolean isOff(OptionalDouble stated, OptionalDouble calculated) {
        double ratio = stated.isPresent() && calculated.isPresent() && stated.getAsDouble() > 1
                ? stated.getAsDouble() / calculated.getAsDouble() : 1;
        return ratio > ASSUMED_MOST_FACTOR || ratio < 1 / ASSUMED_MOST_FACTOR;
    }

    /** Iron that can be dissolved: what passed a filter, else all. */
    private static double iron(Sample sample) {
        return sample.value(Parameter.IRON_DISSOLVED).orElse(sample.orZero(Parameter.IRON));
    }

    private static boolean above(Sample sample, Parameter parameter, double limit) {
        return sample.orZero(parameter) > limit;
    }

    private static boolean below(Sample sample, Parameter parameter, double limit) {
        return sample.value(parameter).orElse(limit) < limit;
    }

    @Override
    public String textId() {
        return Localizable.idOf("contradiction", this);
    }
}
