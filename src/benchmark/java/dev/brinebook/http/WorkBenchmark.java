// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.model.Model;
import dev.brinebook.operation.softener.SizeSoftener;
import dev.brinebook.operation.softener.SizingRequest;
import dev.brinebook.text.Language;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a sizing costs by how much there is to do: from bytes to bytes. Of each kind the times should lie on a line. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class WorkBenchmark {

    private static final String WATER = "{\"water\": {\"hardness\": {\"value\": 22, \"unit\": \"gpg\"}}, ";
    private static final JsonReader READER = new JsonReader();
    private static final JsonWriter WRITER = new JsonWriter();

    /** A series of days. */
    @State(Scope.Benchmark)
    public static class Series {

        @Param({"30", "183", "365", "730", "1095"})
        private int days;
        private byte[] request;

        @Setup
        public void write() {
            request = bytes(WATER + "\"household\": {\"dailySeries\": {\"firstDate\": \"2023-01-01\", \"unit\": \"L\", \"values\": ["
                    + listed(days, day -> Integer.toString(500 + day * 7_919 % 1_000)) + "]}}, \"candidates\": ["
                    + candidate(40) + "]}");
        }
    }

    /** A list of softeners to choose from. */
    @State(Scope.Benchmark)
    public static class Candidates {

        @Param({"1", "50", "125", "250", "500"})
        private int candidates;
        private byte[] request;

        @Setup
        public void write() {
            request = bytes(WATER + "\"household\": {\"people\": 5}, \"candidates\": ["
                    + listed(candidates, WorkBenchmark::candidate) + "]}");
        }
    }

    @Benchmark
    public byte[] byDays(Series series) {
        return answer(series.request);
    }

    @Benchmark
    public byte[] byCandidates(Candidates candidates) {
        return answer(candidates.request);
    }

    private static String candidate(int number) {
        return "{\"sku\": \"invented-%d\", \"resinVolume\": {\"value\": %d, \"unit\": \"L\"}}".formatted(number, 20 + number % 60);
    }

    private static String listed(int count, IntFunction<String> element) {
        return IntStream.range(0, count).mapToObj(element).collect(Collectors.joining(", "));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] answer(byte[] request) {
        return WRITER.write(SizeSoftener.OPERATION.calculate().apply(READER.read(request, SizingRequest.class), Model.CURRENT),
                Language.ENGLISH);
    }
}
