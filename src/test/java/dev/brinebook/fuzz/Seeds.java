// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.contract.Committed;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where fuzzing starts: the committed examples, whatever was found before, and the words of the contract. */
final class Seeds {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path EXAMPLES = Path.of("openapi", "examples");
    private static final Path FOUND = Path.of("src", "test", "resources", "fuzz");
    private static final int RANDOM_BYTES = 400;
    private static final int RANDOM_SEEDS = 20;
    private static final int LONGEST_WORD = 60;

    private Seeds() {
    }

    /** Writes a folder of seeds for each aim, and the words. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        for (int i = 0; i < FuzzTarget.AIMS.size(); i++) {
            FuzzTarget.Aim aim = FuzzTarget.AIMS.get(i);
            Path own = Files.createDirectories(folder.resolve(aim.toString()));
            int number = 0;
            for (byte[] seed : of(aim.operation(), aim.way())) {
                ByteArrayOutputStream whole = new ByteArrayOutputStream();
                whole.write(i);
                whole.writeBytes(seed);
                Files.write(own.resolve("seed-" + number++), whole.toByteArray());
            }
        }
        Files.writeString(folder.resolve("words.txt"), words());
    }

    /** Seeds, each with the byte of options before it. */
    static List<byte[]> of(Operation<?, ?> operation, Way way) throws IOException {
        return switch (way) {
            case BODY -> Stream.concat(requests(operation).stream(), found(operation).stream())
                    .map(json -> seed(0, json)).toList();
            case RECORD -> random();
            case QUERY -> List.of(seed(0, query(operation.query(), false)), seed(1, query(operation.query(), true)));
            case TEXT -> List.of(seed(0, query(operation.textForm().query(), false) + "\n" + operation.textForm().example()));
            case LINES -> lines(operation);
        };
    }

    private static List<String> requests(Operation<?, ?> operation) throws IOException {
        List<String> requests = new ArrayList<>();
        for (String example : operation.examples()) {
            requests.add(compact(EXAMPLES.resolve(operation.exampleFile(example, "request"))));
        }
        return requests;
    }

    /** Requests that once broke a promise. */
    static List<String> found(Operation<?, ?> operation) {
        try (Stream<Path> files = Files.list(FOUND)) {
            return files.filter(file -> file.getFileName().toString().startsWith(operation.id() + ".")).sorted()
                    .map(Seeds::compact).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Any bytes, of which the first are the options. */
    private static List<byte[]> random() {
        Random random = new Random(1);
        return Stream.generate(() -> {
            byte[] seed = new byte[RANDOM_BYTES];
            random.nextBytes(seed);
            return seed;
        }).limit(RANDOM_SEEDS).toList();
    }

    private static List<byte[]> lines(Operation<?, ?> operation) throws IOException {
        List<byte[]> seeds = new ArrayList<>(List.of(seed(0, String.join("\n", requests(operation)) + "\n\nno JSON\n")));
        if (operation.id().equals("compensateHardness")) {
            seeds.add(seed(Way.table(), Files.readString(EXAMPLES.resolve("calculateInBulk.water-tests.request.csv"))));
        }
        return seeds;
    }

    private static String query(List<QueryParameter> parameters, boolean all) {
        return parameters.stream().filter(parameter -> all || parameter.required()).map(parameter -> parameter.name() + "="
                + URLEncoder.encode(parameter.example(), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }

    private static byte[] seed(int options, String text) {
        ByteArrayOutputStream seed = new ByteArrayOutputStream();
        seed.write(options);
        seed.writeBytes(Way.utf8(text));
        return seed.toByteArray();
    }

    private static String compact(Path file) {
        try {
            return JSON.readTree(file.toFile()).toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names and values of the contract, and what is at the edge of JSON, in the form that the fuzzer reads. */
    private static String words() throws IOException {
        Set<String> words = new TreeSet<>(List.of("null", "true", "false", "{}", "[]", "-0", "1e308", "-1e308", "1e-300", "1e400",
                "0.1", "NaN", "Infinity", "\"\"", "[[[[[[[[", "{\"\":", "\\u0000", "\\ud800", "\uFEFF", "2199-12-31", "1900-01-01",
                "9223372036854775807", "-9223372036854775808", "2147483648"));
        collect(JSON.readTree(Committed.contract()).at("/components/schemas"), words);
        return words.stream().filter(word -> word.length() <= LONGEST_WORD).map(Seeds::quoted).collect(Collectors.joining("\n", "", "\n"));
    }

    private static void collect(JsonNode schema, Set<String> words) {
        schema.path("properties").fieldNames().forEachRemaining(name -> words.add("\"" + name + "\":"));
        schema.path("enum").forEach(value -> words.add(value.toString()));
        schema.forEach(part -> collect(part, words));
    }

    private static String quoted(String word) {
        StringBuilder quoted = new StringBuilder("\"");
        for (byte one : Way.utf8(word)) {
            boolean plain = one >= ' ' && one != '"' && one != '\\';
            quoted.append(plain ? String.valueOf((char) one) : "\\x%02X".formatted(one).toUpperCase(Locale.ROOT).replace("\\X", "\\x"));
        }
        return quoted.append('"').toString();
    }
}
