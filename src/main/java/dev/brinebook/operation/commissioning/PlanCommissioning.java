// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.commissioning.CommissioningBands;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.CommissioningCheck.Kind;
import dev.brinebook.commissioning.CommissioningStage;
import dev.brinebook.commissioning.FirstRegeneration;
import dev.brinebook.commissioning.LaterCheck;
import dev.brinebook.commissioning.PassBand;
import dev.brinebook.commissioning.ReadingOutcome;
import dev.brinebook.commissioning.ReadingOutcome.Verdict;
import dev.brinebook.commissioning.ResinSanitising;
import dev.brinebook.field.BrineTankShape;
import dev.brinebook.field.SaltDissolving;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.model.Model;
import dev.brinebook.payback.Prices;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.TankSize;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How a softener is put into service, and what its first readings say. */
public final class PlanCommissioning {

    public static final Operation<CommissioningRequest, CommissioningAnswer> OPERATION = new Operation<>(
            "planCommissioning", "/v1/commissioning-plan", "Plan the commissioning of a softener",
            "Choose this when a softener or its new controller is put into service. It gives what to set in which order and what the "
                    + "controller must show, each stage with its wait, every step of the first regeneration, and for each reading the "
                    + "band that sound equipment keeps in this case: flows, refill, brine, minutes of the draw, chloride, hardness at "
                    + "outlet and tap, meter, pressure. With readings it states pass, fail or measure again, why, and what to look at. "
                    + "For readings without a plan choose reduceFieldMeasurements. To find the settings choose assess.",
            CommissioningRequest.class, CommissioningAnswer.class, PlanCommissioning::answer, List.of(),
            List.of("well-family", "apartment")).answeringIn(CommissioningSheet.forms());

    private static final String OWN = "OWN-ASSUMPTION";
    private static final double MINUTES_PER_HOUR = 60;

    private PlanCommissioning() {
    }

    static CommissioningAnswer answer(CommissioningRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        PlannedSettings settings = PlannedSettings.of(CommissioningSettingsRequest.orAdvised(request.settings()), given,
                cost(request, given, explanation), explanation);
        request.softener().resolved(model).recordFlows(settings.setup(), given.duty(), explanation);
        double bleach = explanation.resolve(request.bleachPercent(), Resolved.of("/bleachPercent", ResinSanitising.USUAL_PERCENT, "%")
                .byDefault("CP-RESIN-SANITISING"));
        CommissioningBands bands = bands(request, given, settings.cycle(), units, explanation);
        List<CommissioningCheckLine> checks = checks(request, bands, units, explanation);
        ReadingTally tally = request.readings() == null ? null : ReadingTally.of(checks);
        List<CommissioningSettingLine> lines = settings.lines(units);
        LocalDate first = given.duty().days().firstDate();
        warn(request, given, settings.cycle(), explanation);
        assumeMethod(units, explanation);
        CycleTable.explain("/cycle", explanation);
        return new CommissioningAnswer(explanation.behindStops(summary(lines, settings.cycle(), checks, tally)), lines,
                Arrays.stream(CommissioningStage.values()).map(stage -> CommissioningStageLine.of(stage, bands,
                        settings.cycle().totalMinutes())).toList(), CycleTable.of(settings.cycle(), units),
                CommissioningBrine.of(bands.regeneration(), bands, bleach, units), checks,
                units.flow(bands.regeneration().testLitresPerMinute()), tally,
                ExpectedWeeks.of(settings.setup(), given.duty(), units),
                Arrays.stream(LaterCheck.values()).map(check -> LaterCheckLine.of(check, first)).toList(), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static RunningCost cost(CommissioningRequest request, SoftenerCase given, Explanation explanation) {
        Supply supply = given.duty().water().supply();
        Prices prices = LocalPrices.of(request.prices(), request.household()).toDomain(supply == Supply.PRIVATE_WELL,
                SiteRequest.orUnseen(request.site()).ownSewage(supply), explanation);
        return new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
    }

    private static CommissioningBands bands(CommissioningRequest request, SoftenerCase given, Cycle cycle, AnswerUnits units,
            Explanation explanation) {
        double usualDrop = HardnessUnit.GPG.toBase(CommissioningRequest.USUAL_DROP_GRAINS);
        double drop = explanation.resolve(request.dropSize(), usualDrop, Resolved.of("/dropSize", units.hardness(usualDrop))
                .byDefault("CP-FIELD-TESTS"));
        Optional<FirstRegeneration.BrineTank> tank = Optional.ofNullable(request.brineTank()).map(CommissioningTankRequest::toDomain);
        tank.ifPresent(known -> {
            explanation.resolve("/brineTank/shape", request.brineTank().shape(), BrineTankShape.ROUND, OWN);
            explanation.resolve(request.brineTank().voidShare(), Resolved.of("/brineTank/voidShare",
                    BrineTankShape.ASSUMED_OTHER_VOID_SHARE, null).byDefault(OWN));
        });
        return new CommissioningBands(new FirstRegeneration(given.found().softener(), cycle, given.duty().water().temperatureCelsius(),
                tank), drop);
    }

    private static List<CommissioningCheckLine> checks(CommissioningRequest request, CommissioningBands bands, AnswerUnits units,
            Explanation explanation) {
        List<CommissioningReadingRequest> readings = request.readings() == null ? List.of() : request.readings();
        IntStream.range(0, readings.size()).filter(i -> !bands.has(readings.get(i).check())).findFirst().ifPresent(i -> {
            throw InvalidRequest.impossible("/readings/" + i + "/check", Message.of("problem.commissioning.noSuchCheck"));
        });
        Map<CommissioningCheck, CommissioningReadingRequest> read = readings.stream().collect(Collectors.toMap(
                CommissioningReadingRequest::check, Function.identity()));
        return Arrays.stream(CommissioningCheck.values()).filter(bands::has)
                .map(check -> check(check, read.get(check), bands, units, explanation)).toList();
    }

    private static CommissioningCheckLine check(CommissioningCheck check, CommissioningReadingRequest reading, CommissioningBands bands,
            AnswerUnits units, Explanation explanation) {
        if (check.kind() == Kind.YES_NO) {
            CommissioningCheckLine line = CommissioningCheckLine.ofYesNo(check);
            return reading == null ? line : line.read(null, reading.yes() ? ReadingOutcome.CONFIRMED : ReadingOutcome.DENIED,
                    Optional.empty());
        }
        OptionalDouble halfWidth = reading == null ? OptionalDouble.empty() : reading.halfWidth();
        PassBand band = bands.band(check, halfWidth);
        double u = bands.readingUncertainty(check, halfWidth);
        boolean known = bands.regeneration().isKnown(check);
        CommissioningCheckLine line = CommissioningCheckLine.of(check, band, u, known, ReadingUnit.of(check.kind(), units, explanation));
        return reading == null ? line : line.read(reading.inBase(), band.outcome(reading.inBase(), u, known),
                moreRinse(check, reading.inBase(), band, bands.regeneration()));
    }

    /** How much longer to rinse, where brine is left and there is a step for it. */
    private static Optional<Message> moreRinse(CommissioningCheck check, double read, PassBand band, FirstRegeneration regeneration) {
        boolean left = (check == CommissioningCheck.RINSE_CHLORIDE || check == CommissioningCheck.RINSE_CONDUCTIVITY)
                && read > band.highFail();
        return !left ? Optional.empty() : regeneration.step(CycleStep.Kind.FAST_RINSE).map(rinse -> Message.of("commissioning.moreRinse",
                Text.whole(Math.ceil(regeneration.moreRinseLitres(read, band.highPass()) / rinse.flowLitresPerMinute()))));
    }

    private static Message summary(List<CommissioningSettingLine> settings, Cycle cycle, List<CommissioningCheckLine> checks,
            ReadingTally tally) {
        Message plan = Message.of("commissioning.plan", settings.stream().filter(CommissioningSettingLine::entered).count(),
                Text.digits(SaltDissolving.WAIT_MINUTES / MINUTES_PER_HOUR), Text.whole(cycle.totalMinutes()));
        if (tally == null) {
            return plan;
        }
        List<Message> sentences = new ArrayList<>();
        sentences.add(Message.of("commissioning.tally", tally.passed(), tally.toMeasureAgain(), tally.failed()));
        first(checks, Verdict.FAIL).or(() -> first(checks, Verdict.MEASURE_AGAIN)).ifPresent(line -> {
            sentences.add(Message.of("commissioning.lookFirst", line.name()));
            sentences.add(line.reason());
        });
        if (!tally.missing().isEmpty()) {
            sentences.add(Message.of("commissioning.missing", tally.missing().size()));
        }
        return Message.sentences(sentences);
    }

    private static Optional<CommissioningCheckLine> first(List<CommissioningCheckLine> checks, Verdict verdict) {
        return checks.stream().filter(line -> line.verdict() == verdict).findFirst();
    }

    private static void warn(CommissioningRequest request, SoftenerCase given, Cycle cycle, Explanation explanation) {
        Supply supply = given.duty().water().supply();
        explanation.caution(HomeCountry.airGap(request.household().country()), Caution.BLEACH_ALONE);
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(SiteRequest.orUnseen(request.site()).wasteWaterCautions(supply));
        boolean tankKnown = request.softener().resolved(given.model()).tankSize() == TankSize.KNOWN;
        if (tankKnown && request.softener().flows() != null && request.softener().flows().drain() != null
                && losesResin(given.found().softener(), cycle)) {
            explanation.caution(Caution.BACKWASH_LOSES_RESIN);
        }
    }

    private static boolean losesResin(Softener softener, Cycle cycle) {
        OptionalResult lift = cycle.backwashExpansionShare();
        return !lift.exists() || lift.value() > softener.bed().freeboardShare(softener.tankHeightMetres());
    }

    /** What no property of the request sets. */
    private static void assumeMethod(AnswerUnits units, Explanation explanation) {
        assumePercent("flowControlTolerance", CommissioningBands.ASSUMED_FLOW_CONTROL_SHARE, explanation);
        assumePercent("suctionTolerance", CommissioningBands.ASSUMED_SUCTION_SHARE, explanation);
        assumePercent("saturationTolerance", CommissioningBands.ASSUMED_SATURATION_SHARE, explanation);
        explanation.assume(Resolved.of("chlorideLeft", units.concentration(CommissioningBands.ASSUMED_MOST_CHLORIDE_MG_PER_L))
                .byDefault(OWN));
        explanation.assume(Resolved.of("valvePressureLoss", units.pressure(CommissioningBands.ASSUMED_VALVE_LOSS_KILOPASCALS))
                .byDefault(OWN));
        explanation.assume(Resolved.of("pressureTestVelocity", units.surfaceFlow(FirstRegeneration.TEST_METRES_PER_HOUR))
                .byDefault("UFC-3-230-02"));
        explanation.assume(Resolved.of("failFactor", PassBand.ASSUMED_FAIL_FACTOR, null).byDefault(OWN));
        explanation.assume(Resolved.of("meterCheckWater", units.volume(CommissioningBands.ASSUMED_METER_CHECK_LITRES)).byDefault(OWN));
    }

    private static void assumePercent(String name, double share, Explanation explanation) {
        explanation.assume(Resolved.of(name, 100 * share, "%").byDefault(OWN));
    }
}
