// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.DemandCurve;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.household.FixtureLine;
import dev.brinebook.text.Message;
import java.util.List;

/** Peak flow of fixtures. */
public final class EstimatePeakFlow {

    public static final Operation<PeakFlowRequest, PeakFlowAnswer> OPERATION = new Operation<>("estimatePeakFlow",
            "/v1/peak-flow", "Estimate the peak flow of fixtures by four methods",
            "Choose this to find the peak flow of a house, or why two estimates of it differ. From a list of fixtures it gives the peak "
                    + "flow by the plumbing code, by statistics of measured homes (exact and fitted) and by the German standard, and "
                    + "recommends which one to size a softener for. You can send the same list to sizeSoftener as household.fixtures. "
                    + "For the flow limits of a bed use computeBedHydraulics.",
            PeakFlowRequest.class, PeakFlowAnswer.class, EstimatePeakFlow::answer, List.of(),
            List.of("well-family", "apartment"));

    private EstimatePeakFlow() {
    }

    private static PeakFlowAnswer answer(PeakFlowRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        HomeCountry.of(request.country(), explanation);
        PeakFlowEstimate estimate = estimate(request, explanation);
        explain(explanation);
        PeakForSizing sizing = PeakForSizing.of(estimate, units);
        CodePeak code = CodePeak.of(estimate, units);
        DesignPeak design = DesignPeak.of(estimate, units);
        ExactPeak exact = ExactPeak.of(estimate, units);
        FittedPeak fitted = FittedPeak.of(estimate, units);
        Message summary = Message.sentences(List.of(advice(sizing), Message.of("estimatePeakFlow.plumbingCodePipesGives",
                code.peak().inWords(), exact.peak().inWords(), fitted.peak().inWords(), design.peak().inWords())));
        return new PeakFlowAnswer(summary, sizing, exact, fitted, code, design,
                Rounding.answer(100 * estimate.percentile()), PeakDifferences.of(estimate),
                estimate.schedule().fixtures().stream().map(fixture -> FixtureLine.of(fixture, units)).toList(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static PeakFlowEstimate estimate(PeakFlowRequest request, Explanation explanation) {
        FixtureSchedule schedule = FixtureLine.schedule("/fixtures", request.fixtures(), explanation);
        double percent = explanation.resolve(request.percentile(), PeakFlowRequest.DEFAULT_PERCENTILE, Resolved.of("/percentile",
                PeakFlowRequest.DEFAULT_PERCENTILE, "%").byDefault("BUCHBERGER-2017"));
        DemandCurve curve = request.demandCurve() == null ? schedule.curve() : request.demandCurve();
        Resolved used = Resolved.of("/demandCurve", curve);
        explanation.assume(request.demandCurve() == null ? used.estimated("IPC-E103") : used);
        return new PeakFlowEstimate(schedule, curve,
                explanation.resolve("/buildingType", request.buildingType(), BuildingType.DWELLING, "OWN-ASSUMPTION"), percent / 100);
    }

    private static Message advice(PeakForSizing sizing) {
        return sizing.peakFlow() == null
                ? Message.sentences(List.of(Message.of("estimatePeakFlow.noFlowSizeSoftener"), sizing.why()))
                : Message.of("estimatePeakFlow.sizeSoftenerPeakFlow", Text.rounded(sizing.peakFlow()),
                        Text.rounded(sizing.continuousFlow()));
    }

    private static void explain(Explanation explanation) {
        explanation.assume(Resolved.inWords("fixturesAreIndependent", Message.of("assumed.household.eachFixtureRunsIndependently"))
                .byDefault("BUCHBERGER-2017"));
        explanation.assume(Resolved.inWords("bathroomGroup", Message.of("assumed.household.flowsShowerLavatoryWater"))
                .byDefault("IPC-E103"));
        ExactPeak.explain(explanation);
        explanation.caution(Caution.LOCAL_CODE_DECIDES, Caution.PIPES_BY_CODE);
    }
}
