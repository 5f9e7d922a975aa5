package dev.brinebook.operation.household;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.household.FixtureLine;
import dev.brinebook.wording.Message;
import java.util.List;

/** How much fixtures draw at once. */
public final class EstimatePeakFlow {

    public static final Operation<PeakFlowRequest, PeakFlowAnswer> OPERATION = new Operation<>("estimatePeakFlow",
            "/v1/peak-flow", "Estimate the peak flow of fixtures by four methods",
            "Choose this when the question is how much water a house draws at once, or why two estimates of it differ: from"
                    + " a list of fixtures it gives the flow of the plumbing code, of statistics of measured homes (exact and"
                    + " fitted) and of the German standard side by side, and which of them to size a softener for. The same"
                    + " list can be given to sizeSoftener as household.fixtures. To see what a bed takes use"
                    + " computeBedHydraulics.",
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
        Message summary = Message.joined(" ", List.of(advice(sizing), Message.of("The plumbing code, which is for pipes, gives"
                + " {0}; the exact statistics give {1}, their fit gives {2}; the German standard gives {3}.",
                code.peak().inWords(), exact.peak().inWords(), fitted.peak().inWords(), design.peak().inWords())));
        return new PeakFlowAnswer(summary, sizing, exact, fitted, code, design,
                Rounding.answer(100 * estimate.percentile()), PeakDifferences.of(estimate),
                estimate.schedule().fixtures().stream().map(fixture -> FixtureLine.of(fixture, units)).toList(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static PeakFlowEstimate estimate(PeakFlowRequest request, Explanation explanation) {
        FixtureSchedule schedule = FixtureLine.schedule("fixtures", request.fixtures(), explanation);
        double percent = explanation.orDefault("percentile", request.percentile(), 100 * PeakFlow.DEFAULT_PERCENTILE,
                number -> Message.of("{0} %", number));
        return new PeakFlowEstimate(schedule,
                explanation.orDefault("demandCurve", request.demandCurve(), schedule.curve()),
                explanation.orDefault("buildingType", request.buildingType(), BuildingType.DWELLING), percent / 100);
    }

    private static Message advice(PeakForSizing sizing) {
        return sizing.peakFlow() == null
                ? Message.joined(" ", List.of(Message.of("No flow to size a softener for is advised."), sizing.why()))
                : Message.of("Size the softener for a peak of {0} and for {1} that last.", Text.of(sizing.peakFlow()),
                        Text.of(sizing.continuousFlow()));
    }

    private static void explain(Explanation explanation) {
        explanation.assume("independence", Message.of("each fixture runs or not without regard to the others, as likely at every"
                + " moment of the busy hour"), Origin.DEFAULT);
        explanation.assume("bathroomGroup", Message.of("draws as a shower, a lavatory and a water closet"), Origin.DEFAULT);
        explanation.given("/percentile");
        FixtureLine.explain(explanation);
        PeakForSizing.explain(explanation);
        ExactPeak.explain(explanation);
        FittedPeak.explain(explanation);
        CodePeak.explain(explanation);
        DesignPeak.explain(explanation);
        explanation.caution(Caution.LOCAL_CODE_DECIDES, Caution.PIPES_BY_CODE);
    }
}
