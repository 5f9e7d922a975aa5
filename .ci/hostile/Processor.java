// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** The processor of the service: what others on this machine take of it, so that a breach of theirs is not the service's. */
final class Processor {

    /** Of what others take, from here on a measurement is repeated. */
    private static final double QUIET_SHARE = 0.1;
    /** The first fields of a processor in /proc/stat, see proc(5). */
    private static final int USER_NICE_SYSTEM = 3;

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
            String ticks = Files.readAllLines(Path.of("/proc/stat")).stream().filter(line -> line.startsWith(name))
                    .map(line -> line.substring(name.length())).findFirst().orElseThrow();
            long busy = Arrays.stream(ticks.split(" ")).limit(USER_NICE_SYSTEM).mapToLong(Long::parseLong).sum();
            return busy / (double) Service.TICKS_PER_SECOND - service.processorSeconds();
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
