// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;

/** The committed examples, and requests drawn from them by seed: the same seed draws the same requests. */
final class Requests {

    static final Path EXAMPLES = Path.of("openapi", "examples");
    static final ObjectMapper JSON = new ObjectMapper();

    /** mg/L as CaCO3 in one of a unit, near enough to draw by. */
    private static final Map<String, Double> MG_PER_L = Map.of("mg/L", 1.0, "gpg", 17.1181, "gpg-imperial", 14.2538, "dH", 17.848,
            "fH", 10.0, "mmol/L", 100.09, "meq/L", 50.043);
    private static final int DISTRICT_WATERS = 20;
    private static final double SOFTEST_MG_PER_L = 80;
    private static final double HARDNESS_RANGE_MG_PER_L = 500;

    /** Path of each operation that is asked by POST with an example. */
    private final Map<String, String> paths = new LinkedHashMap<>();

    Requests() throws IOException {
        JSON.readTree(Path.of("openapi", "openapi.json").toFile()).path("paths").properties().forEach(path -> {
            String id = path.getValue().path("post").path("operationId").asText("");
            if (!id.isEmpty() && !path.getKey().contains("{")) {
                paths.put(id, path.getKey());
            }
        });
    }

    List<String> operations() {
        return List.copyOf(paths.keySet());
    }

    String path(String operation) {
        return paths.get(operation);
    }

    /** The examples of an operation, as committed. */
    List<Message> examples(String operation) throws IOException {
        try (var files = Files.list(EXAMPLES)) {
            List<Message> found = new ArrayList<>();
            for (Path file : files.filter(one -> one.getFileName().toString().matches(operation + "\\..*\\.request\\.json")).sorted()
                    .toList()) {
                found.add(Message.json(path(operation), Files.readAllBytes(file)));
            }
            return found;
        }
    }

    /** The committed request of an operation for an invented household. */
    static ObjectNode example(String operation, String household) {
        try {
            return (ObjectNode) JSON.readTree(EXAMPLES.resolve(operation + "." + household + ".request.json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Message message(String operation, JsonNode request) {
        return Message.json(path(operation), bytes(request.toString()));
    }

    /** Requests of an operation that differ from an example as {@code change} draws it. */
    List<Message> drawn(String operation, String household, int count, long seed, BiConsumer<ObjectNode, Random> change) {
        ObjectNode request = example(operation, household);
        Random random = new Random(seed);
        return IntStream.range(0, count).mapToObj(number -> {
            change.accept(request, random);
            return message(operation, request);
        }).toList();
    }

    /** As many requests of an operation, from all its examples, each with another water and household. */
    List<Message> various(String operation, int count, long seed) throws IOException {
        List<ObjectNode> examples = new ArrayList<>();
        for (Message message : examples(operation)) {
            examples.add((ObjectNode) JSON.readTree(message.body()));
        }
        Random random = new Random(seed);
        return IntStream.range(0, count).mapToObj(number -> {
            ObjectNode request = examples.get(number % examples.size());
            ObjectNode thisCase = request.has("thisCase") ? request.withObject("/thisCase") : request;
            newWater(thisCase, random, number % 2 == 0);
            newHousehold(thisCase, random);
            newDose(thisCase, random);
            return message(operation, request);
        }).toList();
    }

    /** A water that was not asked for before, with its dissolved solids. */
    static void newWater(ObjectNode request, Random random) {
        newWater(request, random, true);
    }

    /** A water that was not asked for before. */
    static void newWater(ObjectNode request, Random random, boolean solids) {
        double mgPerL = SOFTEST_MG_PER_L + HARDNESS_RANGE_MG_PER_L * random.nextDouble();
        ObjectNode water = request.has("water") ? request.withObject("/water") : request;
        if (MG_PER_L.containsKey(water.path("hardness").path("unit").asText())) {
            setHardness(water.withObject("/hardness"), mgPerL, 3);
        }
        if (water.has("calcium")) {
            put(water.withObject("/calcium"), mgPerL / 3.2, 2);
            put(water.withObject("/magnesium"), mgPerL / 20, 2);
        }
        if (water.has("iron")) {
            put(water.withObject("/iron"), 1.5 * random.nextDouble(), 2);
        }
        if (request.has("water")) {
            water.remove("dissolvedSolids");
            if (solids) {
                put(water.putObject("dissolvedSolids").put("unit", "mg/L"), 1.1 * mgPerL + 400 * random.nextDouble(), 1);
            }
        }
    }

    /** One of the twenty waters of a district. */
    static void districtWater(ObjectNode request, Random random) {
        newWater(request, new Random(random.nextInt(DISTRICT_WATERS)), true);
    }

    /** Another dose, as it is set. */
    private static void newDose(ObjectNode request, Random random) {
        if (request.path("softener").has("saltDose")) {
            ObjectNode dose = request.withObject("/softener/saltDose");
            boolean metric = dose.path("unit").asText().equals("g/L");
            put(dose, (metric ? 16 : 1) * (6 + random.nextInt(10)), 0);
        }
    }

    /** Another household and price of a retrofit; the same water and softener. */
    static void newHousehold(ObjectNode request, Random random) {
        if (request.path("household").has("people")) {
            request.withObject("/household").put("people", 1 + random.nextInt(8));
        }
        if (request.path("retrofit").has("cost")) {
            put(request.withObject("/retrofit/cost"), 200 + random.nextInt(400), 0);
        }
    }

    /** A hardness in its own unit, with as many decimals. */
    static void setHardness(ObjectNode hardness, double mgPerL, int decimals) {
        put(hardness, mgPerL / MG_PER_L.get(hardness.path("unit").asText()), decimals);
    }

    static void put(ObjectNode quantity, double value, int decimals) {
        quantity.put("value", BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
