// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.HardnessClass;
import dev.brinebook.water.HardnessStep;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.Treatment;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.water.report.Guideline.Authority;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a report comes to for the person who has the water: the verdict that a further test may change. It is made by the same
 * calculation as any other, so that a test counts for as much as it moves there.
 *
 * @param softener whether softening changes anything
 * @param hardnessSetting the hardness to set, gpg; 0 where no softener is needed
 * @param treatments what comes before a softener
 * @param cautions warnings about what is done, without those that only question the report or tell of taste and stains
 * @param health what misses a value that protects health: for the health authority
 */
public record ReportAdvice(boolean softener, double hardnessSetting, List<Treatment> treatments, Set<Caution> cautions,
        Set<Parameter> health) {

    /** Says that something was not tested: a test always ends it, whatever it finds. */
    private static final Caution NOT_TESTED = Caution.WELL_WITHOUT_BACTERIA_TEST;
    private static final double MOSTLY = 0.5;

    public ReportAdvice {
        treatments = List.copyOf(treatments);
        cautions = Collections.unmodifiableSet(cautions);
        health = Collections.unmodifiableSet(health);
    }

    /** The verdict on a sample whose hardness is known or assumed; what was not tested counts nothing. */
    public static ReportAdvice of(Sample sample, Supply supply) {
        WaterAnalysis water = analysis(sample, supply);
        CompensatedHardness sum = water.compensated(CompensationFactors.STANDARD);
        boolean softener = HardnessClass.usgs(water.hardnessMgPerL()) != HardnessClass.SOFT;
        EnumSet<Caution> cautions = EnumSet.noneOf(Caution.class);
        cautions.addAll(WaterCautions.of(water));
        if (softener) {
            cautions.addAll(SoftenedWater.of(sum, water.sodiumMgPerL(), false).cautions());
        }
        cautions.removeIf(caution -> caution.severity() == Severity.INFO || Caution.OF_INPUT.contains(caution)
                || caution == NOT_TESTED);
        Set<Parameter> health = Guideline.missed(sample, Guideline.Kind.HEALTH, Authority.UNITED_STATES, Authority.WHO).stream()
                .map(Guideline::parameter).collect(Collectors.toCollection(() -> EnumSet.noneOf(Parameter.class)));
        return new ReportAdvice(softener, softener ? sum.setting(HardnessStep.of(HardnessUnit.GPG), 0) : 0,
                Treatment.neededBy(water), cautions, health);
    }

    /** The sample as the other calculations take it. */
    public static WaterAnalysis analysis(Sample sample, Supply supply) {
        boolean filtered = sample.has(Parameter.IRON_DISSOLVED) && sample.has(Parameter.IRON);
        boolean visible = filtered && sample.orZero(Parameter.IRON_DISSOLVED) < MOSTLY * sample.orZero(Parameter.IRON);
        return WaterAnalysis.ofHardness(sample.hardnessToGoByMgPerL().orElseThrow())
                .ironMgPerL(sample.has(Parameter.IRON) ? sample.value(Parameter.IRON) : sample.value(Parameter.IRON_DISSOLVED))
                .ironForm(visible ? IronForm.VISIBLE : IronForm.DISSOLVED)
                .manganeseMgPerL(sample.value(Parameter.MANGANESE)).sodiumMgPerL(sample.value(Parameter.SODIUM))
                .ph(sample.value(Parameter.PH)).dissolvedSolidsMgPerL(sample.value(Parameter.DISSOLVED_SOLIDS))
                .freeChlorineMgPerL(sample.value(Parameter.FREE_CHLORINE))
                .hydrogenSulfideMgPerL(sample.value(Parameter.HYDROGEN_SULFIDE)).turbidityNtu(sample.value(Parameter.TURBIDITY))
                .supply(supply).bacteriaTested(sample.has(Parameter.COLIFORM) || sample.has(Parameter.E_COLI)).build();
    }
}
