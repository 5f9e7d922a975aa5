// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import dev.brinebook.http.json.JsonReader;
import dev.brinebook.model.Model;
import dev.brinebook.operation.payback.AlternativesAnswer;
import dev.brinebook.operation.payback.AlternativesRequest;
import dev.brinebook.operation.payback.CompareAlternatives;
import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The committed comparisons of alternatives, from the request as read to the answer. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class AlternativesBenchmark {

    @Param({"well-family", "apartment"})
    private String example;

    @Benchmark
    public AlternativesAnswer comparison() {
        return CompareAlternatives.OPERATION.calculate().apply(request(), Model.CURRENT);
    }

    private AlternativesRequest request() {
        try {
            return new JsonReader().read(Files.readAllBytes(Path.of("openapi/examples/compareAlternatives." + example
                    + ".request.json")), AlternativesRequest.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
