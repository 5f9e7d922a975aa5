// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.server.BrinebookServer;
import dev.brinebook.http.trace.RequestTraces;
import dev.brinebook.log.LogOutput;
import dev.brinebook.operation.assessment.Assess;
import dev.brinebook.operation.commissioning.PlanCommissioning;
import dev.brinebook.operation.comparison.CompareCases;
import dev.brinebook.operation.complaint.DiagnoseComplaint;
import dev.brinebook.operation.cycle.DesignCycle;
import dev.brinebook.operation.field.CheckInstallation;
import dev.brinebook.operation.field.ReduceFieldMeasurements;
import dev.brinebook.operation.household.EstimatePeakFlow;
import dev.brinebook.operation.household.ReadMeter;
import dev.brinebook.operation.payback.CompareAlternatives;
import dev.brinebook.operation.payback.EstimatePayback;
import dev.brinebook.operation.regeneration.BacktestSettings;
import dev.brinebook.operation.regeneration.ChooseReserve;
import dev.brinebook.operation.regeneration.ScheduleRegeneration;
import dev.brinebook.operation.resin.ChartResinCapacity;
import dev.brinebook.operation.resin.ComputeBedHydraulics;
import dev.brinebook.operation.savings.VerifyFleetSavings;
import dev.brinebook.operation.savings.VerifySavings;
import dev.brinebook.operation.softener.BlendHardness;
import dev.brinebook.operation.softener.ReviewSettings;
import dev.brinebook.operation.softener.SizeSoftener;
import dev.brinebook.operation.upkeep.PlanUpkeep;
import dev.brinebook.operation.water.CompensateHardness;
import dev.brinebook.operation.water.ConvertHardness;
import dev.brinebook.operation.water.ReadWaterReport;
import dev.brinebook.request.softener.BedCapacityCache;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.binder.cache.CaffeineCacheMetrics;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Composition root: settings, list of operations, start. */
public final class Main {

    private static final Logger LOG = LoggerFactory.getLogger(Main.class);

    private static final List<Operation<?, ?>> CALCULATORS = List.of(ConvertHardness.OPERATION,
            CompensateHardness.OPERATION, ReadWaterReport.OPERATION, EstimatePeakFlow.OPERATION, ReadMeter.OPERATION,
            SizeSoftener.OPERATION, BlendHardness.OPERATION, ScheduleRegeneration.OPERATION, ChooseReserve.OPERATION, DesignCycle.OPERATION,
            ChartResinCapacity.OPERATION, ComputeBedHydraulics.OPERATION, EstimatePayback.OPERATION,
            CompareAlternatives.OPERATION,
            ReviewSettings.OPERATION, BacktestSettings.OPERATION, ReduceFieldMeasurements.OPERATION,
            CheckInstallation.OPERATION, PlanCommissioning.OPERATION, DiagnoseComplaint.OPERATION, VerifySavings.OPERATION,
            VerifyFleetSavings.OPERATION, PlanUpkeep.OPERATION, Assess.OPERATION);

    /** Every operation, in the order of the contract. */
    public static final List<Operation<?, ?>> OPERATIONS = Stream.concat(CALCULATORS.stream(),
            Stream.of(CompareCases.of(CALCULATORS, new JsonReader()::read))).toList();

    private Main() {
    }

    /** The service, not yet started. */
    public static BrinebookServer server(Settings settings) {
        return server(settings, RequestTraces.NONE);
    }

    private static BrinebookServer server(Settings settings, RequestTraces traces) {
        return new BrinebookServer(settings, OPERATIONS, traces)
                .watch(new CaffeineCacheMetrics<>(BedCapacityCache.curves(), "columns", Tags.empty()));
    }

    public static void main(String[] arguments) {
        if (arguments.length > 0) {
            boolean help = arguments[0].equals("--help");
            (help ? System.out : System.err).println(help ? Settings.help() : "unknown option " + arguments[0]);
            System.exit(help ? 0 : 2);
        }
        BrinebookServer server;
        try {
            server = server(Settings.from(System.getenv()), RequestTraces.of(System.getenv()));
        } catch (IllegalArgumentException e) {
            System.err.println(e.getMessage());
            System.exit(2);
            return;
        }
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) ->
                LOG.error("thread {} ended", thread.getName(), fault));
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            LogOutput.finish();
        }, "stop"));
        try {
            server.startWarm();
        } catch (UncheckedIOException e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
    }
}
