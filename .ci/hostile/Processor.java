import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** The processor of the service: what others on this machine take of it, so that a breach of theirs is not the service's. */
final class Processor {

    /** Of what others take, from here on a measurement is repeated. */
    private static final double QUIET_SHARE = 0.1;

    private final Service service;
    private final double othersBefore;
    private final long began = System.nanoTime();

    /** Begins to look. */
    Processor(Service service) {
        this.service = service;
        othersBefore = othersSeconds();
    }

    /** Busy for processes other than the service, without interrupts; where all share one processor, its callers count too. */
    private double othersSeconds() {
        try {
            String name = "cpu" + Service.processor() + " ";
            long[] ticks = Files.readAllLines(Path.of("/proc/stat")).stream().filter(line -> line.startsWith(name))
                    .map(line -> Arrays.stream(line.substring(name.length()).strip().split(" ")).mapToLong(Long::parseLong).toArray())
                    .findFirst().orElseThrow();
            return (ticks[0] + ticks[1] + ticks[2]) / 100.0 - service.processorSeconds();
        } catch (IOException e) {
            return Double.NaN;
        }
    }

    /** Part of the processor that others took since. */
    double othersShare() {
        return Math.max(0, (othersSeconds() - othersBefore) / ((System.nanoTime() - began) / 1e9));
    }

    static boolean isQuiet(double othersShare) {
        return othersShare <= QUIET_SHARE;
    }
}
