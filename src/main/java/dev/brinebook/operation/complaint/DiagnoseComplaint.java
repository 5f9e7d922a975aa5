// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.complaint.CaseDesign;
import dev.brinebook.complaint.Cause;
import dev.brinebook.complaint.CostOfWaiting;
import dev.brinebook.complaint.Diagnosis;
import dev.brinebook.complaint.Diagnosis.Complaint;
import dev.brinebook.complaint.Diagnosis.Verdict;
import dev.brinebook.complaint.Observation;
import dev.brinebook.complaint.Sign;
import dev.brinebook.complaint.SiteTest;
import dev.brinebook.complaint.SymptomTable;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** What is wrong with a softener that somebody complains of. */
public final class DiagnoseComplaint {

    public static final Operation<ComplaintDiagnosisRequest, ComplaintDiagnosisAnswer> OPERATION = new Operation<>(
            "diagnoseComplaint", "/v1/complaint-diagnosis", "Find what is wrong with a softener",
            "Choose this when something is wrong with a softener: hard or salty water, too much salt or none, a full brine tank, water to "
                    + "the drain, low pressure, colour, resin in taps, odour, or regenerations too often, never, or at the wrong hour. "
                    + "It ranks the causes and shows what each predicts for this case against what was measured, how sure it is, what "
                    + "to do, and what the cause takes while it is left. It names the next test with the most information per minute. Send "
                    + "its result with the same request. For errors in the settings alone choose reviewSettings; for readings alone "
                    + "reduceFieldMeasurements.",
            ComplaintDiagnosisRequest.class, ComplaintDiagnosisAnswer.class, DiagnoseComplaint::answer, List.of(),
            List.of("well-family", "apartment"));

    /** Causes below this share are left out. */
    private static final double ASSUMED_LEAST_SHARE = 0.01;
    private static final int MOST_TESTS = 5;
    private static final String FAULTS = "CP-SOFTENER-FAULTS";
    private static final String OWN = "OWN-ASSUMPTION";

    private DiagnoseComplaint() {
    }

    private static ComplaintDiagnosisAnswer answer(ComplaintDiagnosisRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        ExistingSoftener found = request.softener().resolved(model).found(given, explanation);
        CaseDesign design = CaseDesign.of(found, given.duty());
        List<Observation> observations = ComplaintSigns.of(request, found, given.duty(), design, units, explanation);
        SymptomTable.Weights weights = SymptomWeightsRequest.resolved(request.weights(), explanation);
        boolean unsafe = unsafe(request, explanation);
        Diagnosis diagnosis = Diagnosis.of(new Complaint(Set.copyOf(request.symptoms()), request.notSeen() == null ? Set.of()
                : Set.copyOf(request.notSeen()), weights, !found.policy().byClock(), unsafe, observations));
        List<Cause> shown = diagnosis.ranked().stream().filter(cause -> diagnosis.belief().share(cause) >= ASSUMED_LEAST_SHARE).toList();
        caution(shown, diagnosis, observations, unsafe, given.duty(), explanation);
        assumeMethod(explanation);
        SignValues values = new SignValues(design, units);
        OptionalDouble drain = request.drainInService() == null ? OptionalDouble.empty()
                : OptionalDouble.of(request.drainInService().inBase());
        return new ComplaintDiagnosisAnswer(explanation.behindStops(summary(diagnosis, units)), diagnosis.verdict(),
                shown.stream().map(cause -> line(cause, diagnosis, observations, unsafe, values, CostOfWaiting.of(cause, observations,
                drain, found, given.duty()))).toList(),
                diagnosis.next().stream().limit(MOST_TESTS).map(advice -> TestLine.of(advice, shown, values)).toList(),
                Rounding.toThousandth(diagnosis.belief().entropyBits()), explanation.cautions(), explanation.assumptions(),
                explanation.basis(), ModelVersion.CURRENT);
    }

    private static boolean unsafe(ComplaintDiagnosisRequest request, Explanation explanation) {
        if (request.unsafeRawWater() == null) {
            explanation.assume(Resolved.inWords("/unsafeRawWater", Message.of("assumed.complaint.notUnsafe")).byDefault(OWN));
        }
        return Boolean.TRUE.equals(request.unsafeRawWater());
    }

    private static CauseLine line(Cause cause, Diagnosis diagnosis, List<Observation> observations, boolean unsafe, SignValues values,
            CostOfWaiting cost) {
        return new CauseLine(cause, values.units().saying(cause), percent(diagnosis, cause), Diagnosis.canHurt(cause, unsafe),
                Diagnosis.balances(cause, observations).stream().map(balance -> BalanceLine.of(balance, values)).toList(),
                values.units().saying(cause.fix()), WaitingLine.of(cost, values.units()));
    }

    private static BigDecimal percent(Diagnosis diagnosis, Cause cause) {
        return Rounding.answer(Math.min(100, 100 * diagnosis.belief().share(cause)));
    }

    private static void caution(List<Cause> shown, Diagnosis diagnosis, List<Observation> observations, boolean unsafe,
            DesignConditions duty, Explanation explanation) {
        Set<Caution> cautions = EnumSet.copyOf(Caution.OF_INSTALLATION);
        boolean noGap = observations.stream().anyMatch(one -> one.sign() == Sign.AIR_GAP_MISSING && one.yes());
        if (noGap || diagnosis.belief().share(Cause.CROSS_CONNECTION) >= Diagnosis.ASSUMED_HURTS_SHARE) {
            cautions.add(Caution.CROSS_CONNECTION);
        }
        if (unsafe && shown.stream().anyMatch(cause -> Diagnosis.letsRawWaterPass(cause)
                && diagnosis.belief().share(cause) >= Diagnosis.ASSUMED_HURTS_SHARE)) {
            cautions.add(Caution.TREATMENT_BYPASSED);
        }
        cautions.addAll(ofRemedies(shown, diagnosis, observations));
        explanation.cautions(cautions);
        explanation.cautions(WaterCautions.ofDischarge(duty.water().supply()));
    }

    /** Of acid, bleach and resin cleaner, where a fix or a test asks for them. */
    private static Set<Caution> ofRemedies(List<Cause> shown, Diagnosis diagnosis, List<Observation> observations) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        boolean tested = observations.stream().anyMatch(one -> one.sign() == Sign.ACID_TURNS_YELLOW);
        if (tested || diagnosis.next().stream().limit(MOST_TESTS).anyMatch(advice -> advice.test() == SiteTest.ACID_TEST)) {
            cautions.add(Caution.ACID_ON_SAMPLE);
        }
        if (shown.contains(Cause.RESIN_FOULED)) {
            cautions.add(Caution.RESIN_CLEANER_ALONE);
        }
        if (shown.contains(Cause.BACTERIA)) {
            cautions.add(Caution.BLEACH_ALONE);
        }
        return cautions;
    }

    private static void assumeMethod(Explanation explanation) {
        explanation.assume(Resolved.of("weightOfTheUnexpected", SymptomTable.Weights.ASSUMED_NOT, null).byDefault(FAULTS));
        explanation.assume(Resolved.of("shareThatIsFound", 100 * Diagnosis.ASSUMED_FOUND_SHARE, "%").byDefault(OWN));
        explanation.assume(Resolved.of("shareThatIsLikely", 100 * Diagnosis.ASSUMED_LIKELY_SHARE, "%").byDefault(OWN));
        explanation.assume(Resolved.of("minutesOfAFurtherTest", SiteTest.ASSUMED_MINUTES_OF_A_ROUND, "minutes").byDefault(OWN));
    }

    private static Message summary(Diagnosis diagnosis, AnswerUnits units) {
        List<Message> sentences = new ArrayList<>();
        Cause top = diagnosis.top();
        long percent = Math.min(99, Math.round(100 * diagnosis.belief().share(top)));
        sentences.add(verdict(diagnosis.verdict(), percent));
        if (diagnosis.verdict() != Verdict.UNEXPLAINED) {
            sentences.add(units.saying(top));
        }
        if (diagnosis.verdict() == Verdict.FOUND) {
            sentences.add(units.saying(top.fix()));
        } else {
            diagnosis.next().stream().findFirst().ifPresent(advice -> sentences.add(units.saying(advice.test())));
        }
        return Message.sentences(sentences);
    }

    private static Message verdict(Verdict verdict, long percent) {
        return switch (verdict) {
            case FOUND -> Message.of("complaint.found", percent);
            case LIKELY -> Message.of("complaint.likely", percent);
            case OPEN -> Message.of("complaint.open", percent);
            case UNEXPLAINED -> Message.of("complaint.unexplained");
        };
    }
}
