// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.water.report.Estimate;
import dev.brinebook.water.report.Guideline;
import dev.brinebook.water.report.Guideline.Authority;
import dev.brinebook.water.report.MetalForm;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.ReportAdvice;
import dev.brinebook.water.report.ReportUnit;
import dev.brinebook.water.report.Sample;
import dev.brinebook.water.report.WaterReport;
import java.math.BigDecimal;

/** The water of a report, as every other operation takes it, and what to be careful about. */
final class ReportedWater {

    private ReportedWater() {
    }

    /** The water to send on, with the hardness to go by: that of all tests, or the rebuilt one of a softened sample; null without. */
    static WaterRequest of(Sample sample, MetalForm seen, Supply supply, AnswerUnits units) {
        Estimate hardness = sample.estimates().get(Parameter.HARDNESS);
        if (hardness == null) {
            return null;
        }
        double uncertainty = Math.min(2 * hardness.standardUncertainty(), WaterAnalysis.MAX_UNCERTAINTY_MG_PER_L);
        MetalForm iron = seen.with(sample.value(Parameter.IRON), sample.value(Parameter.IRON_DISSOLVED));
        IronForm form = iron.iron().orElse(IronForm.DISSOLVED);
        Parameter tested = form == IronForm.DISSOLVED && sample.has(Parameter.IRON_DISSOLVED) ? Parameter.IRON_DISSOLVED : Parameter.IRON;
        return new WaterRequest(units.hardness(hardness.value()), null, null, units.hardness(uncertainty),
                concentration(sample, tested, units), form, concentration(sample, Parameter.MANGANESE, units),
                concentration(sample, Parameter.SODIUM, units), concentration(sample, Parameter.POTASSIUM, units),
                plain(sample, Parameter.PH), solids(sample, units), concentration(sample, Parameter.FREE_CHLORINE, units),
                concentration(sample, Parameter.HYDROGEN_SULFIDE, units), plain(sample, Parameter.TURBIDITY), null, supply,
                isFreeOfBacteria(sample), null);
    }

    private static ConcentrationQuantity concentration(Sample sample, Parameter parameter, AnswerUnits units) {
        return sample.has(parameter) ? units.concentration(sample.orZero(parameter)) : null;
    }

    private static BigDecimal plain(Sample sample, Parameter parameter) {
        return sample.has(parameter) ? Rounding.answer(sample.orZero(parameter)) : null;
    }

    /** Dissolved solids that can be: not less than what hardness and sodium alone weigh. */
    private static ConcentrationQuantity solids(Sample sample, AnswerUnits units) {
        double least = WaterCautions.leastSolidsMgPerL(sample.orZero(Parameter.HARDNESS), sample.orZero(Parameter.SODIUM));
        return sample.orZero(Parameter.DISSOLVED_SOLIDS) > least * (1 + 1e-5)
                ? concentration(sample, Parameter.DISSOLVED_SOLIDS, units) : null;
    }

    private static boolean isFreeOfBacteria(Sample sample) {
        return (sample.has(Parameter.COLIFORM) || sample.has(Parameter.E_COLI))
                && sample.orZero(Parameter.COLIFORM) == 0 && sample.orZero(Parameter.E_COLI) == 0;
    }

    /** Says that the doubt of the hardness is more than any other operation takes, where it is. */
    static void assume(Sample raw, AnswerUnits units, Explanation explanation) {
        Estimate hardness = raw.estimates().get(Parameter.HARDNESS);
        if (hardness != null && 2 * hardness.standardUncertainty() > WaterAnalysis.MAX_UNCERTAINTY_MG_PER_L) {
            explanation.assume(Resolved.of("largestHardnessUncertainty", units.hardness(WaterAnalysis.MAX_UNCERTAINTY_MG_PER_L))
                    .byDefault("OWN-ASSUMPTION"));
        }
    }

    /** Asks for the unit of a stated hardness as every operation does: one in grains that few waters reach. */
    static void questionUnit(WaterReport report, Explanation explanation) {
        if (report.results().stream().anyMatch(result -> result.parameter() == Parameter.HARDNESS
                && result.printed().reading().unit().kind() == ReportUnit.Kind.CALCIUM_CARBONATE
                && WaterCautions.isMaybeMgPerL(result.estimate().value()))) {
            explanation.caution(Caution.HARDNESS_MAYBE_MG_PER_L);
        }
    }

    /** Those of every water test of the raw water, and those of values of the sample that protect health. */
    static void caution(Sample raw, Sample sample, Supply supply, Explanation explanation) {
        if (raw.has(Parameter.HARDNESS)) {
            explanation.cautions(WaterCautions.of(ReportAdvice.analysis(raw, supply)));
        }
        if (sample.orZero(Parameter.COLIFORM) > 0 || sample.orZero(Parameter.E_COLI) > 0) {
            explanation.caution(Caution.BACTERIA_FOUND);
        }
        boolean missed = Guideline.missed(sample, Guideline.Kind.HEALTH, Authority.values()).stream().anyMatch(guideline ->
                guideline.parameter() != Parameter.COLIFORM && guideline.parameter() != Parameter.E_COLI);
        if (missed) {
            explanation.caution(Caution.HEALTH_VALUE_MISSED);
        }
    }
}
