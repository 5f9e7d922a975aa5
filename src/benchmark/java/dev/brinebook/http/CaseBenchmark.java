// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.api.Explanation;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.model.Model;
import dev.brinebook.operation.assessment.AssessmentRequest;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.SimulationInput;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.MaintenanceTask;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.softener.TunedClock;
import dev.brinebook.verdict.Terms;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What each part of the assessment of the invented well family takes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CaseBenchmark {

    private final AssessmentRequest request = request();
    private final SoftenerCase given = SoftenerCase.of(request, Model.CURRENT, new Explanation());
    private final ExistingSoftener found = request.softener().resolved(Model.CURRENT).found(given, new Explanation());
    private final DesignConditions duty = given.duty();
    private final SoftenerSettings setup = found.setup();
    private final Softener softener = setup.softener();
    private final double dose = setup.countedDoseGramsPerLitre();
    private final Prices prices = Prices.unitedStates2023();
    private final RunningCost cost = new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre());
    private final DosedSoftener dosed = DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius());

    @Benchmark
    public SoftenerCase caseOfARequest() {
        return SoftenerCase.of(request, Model.CURRENT, new Explanation());
    }

    @Benchmark
    public Assessment assessment() {
        return Assessment.of(found, duty, new Terms(prices, Terms.ASSUMED_HORIZON_YEARS, Map.of()));
    }

    @Benchmark
    public Review review() {
        return Review.of(found, duty, cost);
    }

    @Benchmark
    public DosedSoftener designedCycle() {
        return DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius());
    }

    @Benchmark
    public MeterSettings meterSettings() {
        return MeterSettings.of(dosed, duty);
    }

    @Benchmark
    public Fit fit() {
        return Fit.of(dosed, duty, true, Fit.Datasheet.TANK_ALONE);
    }

    @Benchmark
    public DoseChoice.Option oneDose() {
        return DoseSearch.option(softener, dose, duty, cost);
    }

    @Benchmark
    public DoseChoice cheapestDose() {
        return DoseSearch.cheapest(softener, fresh(), cost);
    }

    /** The design conditions with nothing cached yet, as for each request. */
    private DesignConditions fresh() {
        return new DesignConditions(duty.water(), duty.hardness(), duty.demand(), duty.days(), LongRun.of(duty.demand().model()),
                duty.standard(), duty.controller(), duty.minimumIntervalDays(), duty.minimumSaltEfficiencyGramsPerGram(),
                duty.practice());
    }

    @Benchmark
    public HardDays hardDaysOfAYear() {
        return duty.hardDays(found.policy(), dosed.regeneration());
    }

    @Benchmark
    public TunedClock tunedClock() {
        return TunedClock.of(softener, fresh(), cost);
    }

    @Benchmark
    public List<Sizing.Ranked> oneCandidate() {
        return Sizing.rank(List.of(new Sizing.Candidate("invented", softener, Fit.Datasheet.TANK_ALONE, OptionalDouble.empty())), duty,
                cost, OptionalDouble.empty());
    }

    @Benchmark
    public SimulationResult year() {
        return Simulation.simulate(new SimulationInput(duty.days(), duty.hardness().totalMgPerL(), dosed.regeneration()), found.policy());
    }

    @Benchmark
    public ConvertedYears convertedYears() {
        return ConvertedYears.of(setup, MeterSettings.of(dosed, duty).policy(), duty);
    }

    @Benchmark
    public List<MaintenanceTask> upkeep() {
        return MaintenanceTask.of(duty.water(), duty.meanLitres() / softener.bed().resinLitres(), duty.days().firstDate(),
                duty.days().size());
    }

    private static AssessmentRequest request() {
        try {
            return new JsonReader().read(Files.readAllBytes(Path.of("openapi/examples/assess.well-family.request.json")),
                    AssessmentRequest.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
