// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.model.Model;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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

/** Every operation without a socket: bytes parsed, checked, calculated and written, on its first example. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = "-Xmx256m")
public class EdgeBenchmark {

    @Param({"convertHardness", "compensateHardness", "estimatePeakFlow", "readMeter", "sizeSoftener", "blendHardness",
        "scheduleRegeneration", "chooseReserve", "designCycle", "chartResinCapacity", "computeBedHydraulics", "estimatePayback",
        "compareAlternatives", "reviewSettings", "backtestSettings", "assess"})
    public String operation;

    private final JsonReader reader = new JsonReader();
    private final JsonWriter writer = new JsonWriter();
    private Operation<?, ?> asked;
    private byte[] body;

    @Setup
    public void read() throws IOException {
        asked = Main.OPERATIONS.stream().filter(one -> one.id().equals(operation)).findFirst().orElseThrow();
        body = Files.readAllBytes(Path.of("openapi/examples", asked.exampleFile(asked.examples().get(0), "request")));
    }

    @Benchmark
    public byte[] parseCheckCalculateWrite() {
        return answer(asked);
    }

    @Benchmark
    public Object parseAndCheck() {
        return reader.read(body, asked.requestType());
    }

    private <Q extends Record, A extends Record> byte[] answer(Operation<Q, A> one) {
        return writer.write(one.calculate().apply(reader.read(body, one.requestType()), Model.CURRENT), Language.ENGLISH);
    }
}
