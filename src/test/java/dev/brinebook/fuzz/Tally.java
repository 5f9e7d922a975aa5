// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import dev.brinebook.api.Operation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Counts what was sent and answered, and keeps each finding: the first of its kind, as it went over the wire. */
final class Tally {

    private static final String COLUMNS = "%-22s %-7s %9d %9d %9d %8d %8d";

    private final Path folder;
    private final long limitNanos;
    private final boolean stops;
    private final Map<String, Count> counts = new TreeMap<>();
    private final Set<String> kinds = new HashSet<>();
    private long inputs;

    private static final class Count {
        private long inputs;
        private long answered;
        private long slowestNanos;
        private long findings;
    }

    /**
     * A tally of nothing yet.
     *
     * @param folder where findings are written
     * @param limitNanos longest time that an answer may take
     * @param stops whether a finding is thrown, beside being written down
     */
    Tally(Path folder, long limitNanos, boolean stops) {
        this.folder = folder;
        this.limitNanos = limitNanos;
        this.stops = stops;
    }

    long limitNanos() {
        return limitNanos;
    }

    long inputs() {
        return inputs;
    }

    long answered() {
        return counts.values().stream().mapToLong(count -> count.answered).sum();
    }

    void add(Operation<?, ?> operation, Way way, Call call, boolean answered, long nanos, String broken) {
        String name = operation.id() + " " + way.name().toLowerCase(Locale.ROOT);
        Count count = counts.computeIfAbsent(name, n -> new Count());
        inputs++;
        count.inputs++;
        count.answered += answered ? 1 : 0;
        if (nanos > count.slowestNanos) {
            count.slowestNanos = nanos;
            write(name.replace(' ', '.') + ".slowest.http", call.wire());
        }
        String finding = broken == null && nanos > limitNanos ? "took " + nanos / 1_000_000 + " ms" : broken;
        if (finding != null) {
            count.findings++;
            find(name, finding, call);
        }
    }

    private void find(String name, String finding, Call call) {
        String kind = name + " " + finding.replaceAll("\\d+", "0");
        if (kinds.add(kind)) {
            String file = "finding." + name.replace(' ', '.') + "." + Integer.toHexString(kind.hashCode());
            write(file + ".txt", finding.getBytes(StandardCharsets.UTF_8));
            write(file + ".http", call.wire());
        }
        if (stops) {
            throw new AssertionError(name + ": " + finding + "\n" + new String(call.wire(), StandardCharsets.UTF_8));
        }
    }

    /** A line for each operation and way: inputs, answered with 200, refused, slowest in ms, findings. */
    String lines() {
        StringBuilder lines = new StringBuilder();
        counts.forEach((name, count) -> lines.append(COLUMNS.formatted(name.split(" ")[0], name.split(" ")[1], count.inputs,
                count.answered, count.inputs - count.answered, count.slowestNanos / 1_000_000, count.findings)).append('\n'));
        return lines.toString();
    }

    void write(String file, byte[] content) {
        try {
            Files.createDirectories(folder);
            Files.write(folder.resolve(file), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
