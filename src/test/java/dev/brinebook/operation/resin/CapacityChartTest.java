// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.contract.Committed;
import dev.brinebook.http.TestServer;
import dev.brinebook.operation.resin.LineChart.Axis;
import dev.brinebook.operation.resin.LineChart.Curve;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Draws the chart of the README from the service's own answers for three invented waters. */
class CapacityChartTest {

    private static final Path CHART = Path.of("src", "readme", "capacity-by-dose.svg");
    private static final String GREY = "#6b6b6b";

    /** Every half lb/ft³ from 3 to 20. */
    private static final String DOSES = IntStream.rangeClosed(6, 40).mapToObj(halves ->
            "{\"value\": " + halves / 2.0 + ", \"unit\": \"lb/ft3\"}").collect(Collectors.joining(", "));

    @Test
    void theReadmeShowsWhatTheServiceAnswers() throws IOException {
        JsonNode little = points(150, 9.2);
        JsonNode ordinary = points(300, 22.99);
        JsonNode salty = points(300, 459.8);
        LineChart chart = new LineChart("What a salt dose gives, by table and by column",
                new Axis("salt dose, lb of sodium chloride per cubic foot of resin", 3, 20, 1),
                new Axis("capacity, kgr per cubic foot of resin", 0, 45, 5), List.of(
                new Curve("ceiling of salt and resin", GREY, "2 4", curve(ordinary, "stoichiometricCapacity"), List.of()),
                new Curve("working table, any water", "#222222", "8 4", curve(ordinary, "workingTable"), List.of()),
                column("column: 150 mg/L, 0.4 meq/L Na", "#00795a", little),
                column("column: 300 mg/L, 1 meq/L Na", "#005f9e", ordinary),
                column("column: 300 mg/L, 20 meq/L Na", "#c04a00", salty)),
                "no use: more than 1 gpg leaks through from the first litre on");
        Committed.assertHolds(CHART, chart.svg());
    }

    @Test
    void theReadmeHoldsTheChart() throws IOException {
        assertTrue(Files.readString(Path.of("README.md")).contains("](src/readme/capacity-by-dose.svg)"));
    }

    private static Curve column(String label, String colour, JsonNode points) {
        List<Double> none = new ArrayList<>();
        points.forEach(point -> {
            if (point.path("column").has("reason")) {
                none.add(dose(point));
            }
        });
        List<double[]> held = curve(points, "column");
        assertFalse(held.isEmpty(), label);
        return new Curve(label, colour, "none", held, none);
    }

    /** Doses and capacities of a model, as far as it has any. */
    private static List<double[]> curve(JsonNode points, String model) {
        List<double[]> curve = new ArrayList<>();
        points.forEach(point -> {
            JsonNode capacity = point.path(model).has("value") ? point.path(model) : point.path(model).path("capacity");
            if (capacity.has("value")) {
                curve.add(new double[] {dose(point), capacity.path("value").asDouble()});
            }
        });
        return curve;
    }

    private static double dose(JsonNode point) {
        return point.path("saltDose").path("value").asDouble();
    }

    private static JsonNode points(double hardnessMgPerL, double sodiumMgPerL) throws IOException {
        String answer = TestServer.post("/v1/resin-capacity", """
                {"water": {"hardness": {"value": %s, "unit": "mg/L"}, "sodium": {"value": %s, "unit": "mg/L"}},
                 "saltDoses": [%s]}""".formatted(hardnessMgPerL, sodiumMgPerL, DOSES)).statusCode(200).extract().asString();
        return new ObjectMapper().readTree(answer).path("points");
    }
}
