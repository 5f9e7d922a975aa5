// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.model.Model;
import dev.brinebook.operation.softener.SizeSoftener;
import dev.brinebook.operation.softener.SizingAnswer;
import dev.brinebook.operation.softener.SizingRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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

/**
 * A sizing among the standard tanks by the column, whose doses are searched: with and without cached columns. It is placed
 * beside the reader, so that a request is read as a caller writes it, whatever its record is made of.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SizingBenchmark {

    private static final Path EXAMPLE = Path.of("openapi", "examples", "sizeSoftener.well-family.request.json");
    private static final BigDecimal HARDNESS_MG_PER_L = BigDecimal.valueOf(300);
    private static final int DECIMALS = 4;

    private final JsonReader reader = new JsonReader();
    private final ObjectNode example = example();
    private final SizingRequest same = request(0);
    private int asked;

    /** Each request a ten-thousandth of a milligram harder: the same work, and no column that is cached. */
    @Benchmark
    public SizingAnswer coldCache() {
        asked++;
        return SizeSoftener.OPERATION.calculate().apply(request(asked), Model.CURRENT);
    }

    @Benchmark
    public SizingAnswer warmCache() {
        return SizeSoftener.OPERATION.calculate().apply(same, Model.CURRENT);
    }

    private SizingRequest request(int tenThousandthsHarder) {
        example.withObject("/water/hardness").put("unit", "mg/L")
                .put("value", HARDNESS_MG_PER_L.add(BigDecimal.valueOf(tenThousandthsHarder, DECIMALS)));
        return reader.read(example.toString().getBytes(StandardCharsets.UTF_8), SizingRequest.class);
    }

    /** The committed example with the standard tanks to choose from and the column to count with. */
    private static ObjectNode example() {
        try {
            ObjectNode request = (ObjectNode) new ObjectMapper().readTree(EXAMPLE.toFile());
            request.remove("candidates");
            return request;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
