package dev.brinebook;

import dev.brinebook.api.Operation;
import dev.brinebook.assessment.api.Assess;
import dev.brinebook.household.api.EstimatePeakFlow;
import dev.brinebook.household.api.ReadMeter;
import dev.brinebook.http.BrinebookServer;
import dev.brinebook.http.Settings;
import dev.brinebook.log.LogOutput;
import dev.brinebook.payback.api.CompareAlternatives;
import dev.brinebook.payback.api.EstimatePayback;
import dev.brinebook.regeneration.api.BacktestSettings;
import dev.brinebook.regeneration.api.ChooseReserve;
import dev.brinebook.regeneration.api.DesignCycle;
import dev.brinebook.regeneration.api.ScheduleRegeneration;
import dev.brinebook.resin.api.ChartResinCapacity;
import dev.brinebook.resin.api.ComputeBedHydraulics;
import dev.brinebook.softener.api.BlendHardness;
import dev.brinebook.softener.api.RememberedColumns;
import dev.brinebook.softener.api.ReviewSettings;
import dev.brinebook.softener.api.SizeSoftener;
import dev.brinebook.water.api.CompensateHardness;
import dev.brinebook.water.api.ConvertHardness;
import io.micrometer.core.instrument.Tags;
import io.micrometer.core.instrument.binder.cache.CaffeineCacheMetrics;
import java.io.UncheckedIOException;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Composition root: settings, list of operations, start. */
public final class Main {

    private static final Logger LOG = LoggerFactory.getLogger(Main.class);

    /** Every operation, in the order of the contract. */
    public static final List<Operation<?, ?>> OPERATIONS = List.of(ConvertHardness.OPERATION,
            CompensateHardness.OPERATION, EstimatePeakFlow.OPERATION, ReadMeter.OPERATION, SizeSoftener.OPERATION,
            BlendHardness.OPERATION, ScheduleRegeneration.OPERATION, ChooseReserve.OPERATION, DesignCycle.OPERATION,
            ChartResinCapacity.OPERATION, ComputeBedHydraulics.OPERATION, EstimatePayback.OPERATION,
            CompareAlternatives.OPERATION,
            ReviewSettings.OPERATION, BacktestSettings.OPERATION, Assess.OPERATION);

    private Main() {
    }

    /** The service, not yet started. */
    public static BrinebookServer server(Settings settings) {
        return new BrinebookServer(settings, OPERATIONS)
                .watch(new CaffeineCacheMetrics<>(RememberedColumns.cache(), "columns", Tags.empty()));
    }

    public static void main(String[] arguments) {
        if (arguments.length > 0) {
            boolean help = arguments[0].equals("--help");
            (help ? System.out : System.err).println(help ? Settings.help() : "unknown option " + arguments[0]);
            System.exit(help ? 0 : 2);
        }
        BrinebookServer server;
        try {
            server = server(Settings.from(System.getenv()));
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
            server.warmUp().start();
        } catch (UncheckedIOException e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
    }
}
