// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Committed;
import dev.brinebook.http.server.InMemory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What Jazzer calls with bytes of its own making, see {@code .ci/fuzz}. The first byte chooses the operation and the way among
 * those aimed at, the second the language and the form of the answer, the rest is the input.
 */
public final class FuzzTarget {

    /** Every operation in every way that it has. */
    static final List<Aim> AIMS = Main.OPERATIONS.stream().flatMap(operation -> Stream.of(Way.values())
            .filter(way -> way.of(operation)).map(way -> new Aim(operation, way))).toList();

    /** Bytes put before each input. */
    static final int HEAD_BYTES = 2;

    private static final long SAVE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private static List<Aim> aims;
    private static long most;
    private static Tally tally;
    private static Probe probe;
    private static long saved;

    /** An operation and how it is asked. */
    record Aim(Operation<?, ?> operation, Way way) {

        @Override
        public String toString() {
            return operation.id() + "." + way.name().toLowerCase(Locale.ROOT);
        }
    }

    private FuzzTarget() {
    }

    /**
     * Starts the service.
     *
     * @param arguments aims separated by commas, or {@code all}; where to write; how many inputs to send; {@code stop} to end
     *         with the first finding; seconds that an answer may take
     */
    public static void fuzzerInitialize(String[] arguments) throws IOException {
        List<String> wanted = Arrays.asList(arguments[0].split(","));
        aims = AIMS.stream().filter(aim -> arguments[0].equals("all") || wanted.contains(aim.toString())).toList();
        most = Long.parseLong(arguments[2]);
        tally = new Tally(Path.of(arguments[1]), TimeUnit.SECONDS.toNanos(Long.parseLong(arguments[4])), arguments[3].equals("stop"));
        probe = new Probe(new InMemory(), new Promises(Committed.contract()), tally);
        saved = System.nanoTime();
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        // The fuzzer counts calls, of which one may be several inputs.
        if (bytes.length < HEAD_BYTES || tally.inputs() >= most) {
            return;
        }
        int choice = bytes[0] & 0xFF;
        Aim named = AIMS.get(choice % AIMS.size());
        Aim aim = aims.contains(named) ? named : aims.get(choice % aims.size());
        probe.send(aim.operation(), aim.way(), bytes[1] & 0xFF, Arrays.copyOfRange(bytes, HEAD_BYTES, bytes.length));
        if (System.nanoTime() - saved > SAVE_NANOS) {
            save();
        }
    }

    public static void fuzzerTearDown() {
        save();
    }

    private static void save() {
        saved = System.nanoTime();
        tally.write("tally.txt", tally.lines().getBytes(StandardCharsets.UTF_8));
    }
}
