// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.source.Table;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What answers say to people: the unit of hardness, digits, and the words of a region. By common practice of the trade. */
class WordsOfAnswersTest {

    private static final int REQUESTS = Integer.getInteger("requests", 6);
    private static final int REPAIRS = 12;
    private static final Path EXAMPLES = Path.of("openapi/examples");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonReader READER = new JsonReader();
    private static final JsonWriter WRITER = new JsonWriter();

    /** Where a hardness is entered. */
    private static final Set<String> HARDNESS = Set.of("hardness", "hardnessUncertainty", "residualHardness", "leakageHardness",
            "endPoint", "hardnessSetting");
    private static final Pattern HARDNESS_UNIT = Pattern.compile("(mg/L|°dH|°fH|\\bgpg|mmol/L)(?![·/\\w])");
    /** Substances that every country states in mg/L. */
    private static final Pattern SUBSTANCE = Pattern.compile("(?i)iron|manganese|sodium|chlorine|solids|potassium|hydrogen");
    /** Codes, pointers, citations and names, which are the same in every language; formulas, which have limits by law and constants. */
    private static final Set<String> NO_SENTENCES = Set.of("source", "pointer", "code", "name", "sku", "received", "changes");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.,/-])\\d+(?:[.,\\u00a0\\u202f]\\d+)*(?!\\w)");
    private static final Pattern MONEY = Pattern.compile("^\\u00a0[A-Z]{3}\\b");
    private static final int MOST_DIGITS = 4;

    record Asked(Operation<?, ?> operation, ObjectNode request) {

        JsonNode answer(Language language) {
            return tree(WRITER.write(answer(operation), language));
        }

        private <Q extends Record, A extends Record> A answer(Operation<Q, A> asked) {
            return asked.answer(READER.read(request.toString().getBytes(StandardCharsets.UTF_8), asked.requestType()));
        }

        Optional<Asked> changed(ObjectNode other) {
            try {
                Asked changed = new Asked(operation, other);
                changed.answer(operation);
                return Optional.of(changed);
            } catch (InvalidRequest unlike) {
                return Optional.empty();
            }
        }
    }

    private static Stream<Asked> examples() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream().map(name -> new Asked(operation,
                (ObjectNode) tree(read(EXAMPLES.resolve(operation.exampleFile(name, "request")))))));
    }

    private static Stream<Asked> random() {
        return Main.OPERATIONS.stream().flatMap(operation -> LongStream.rangeClosed(1, REQUESTS)
                .mapToObj(seed -> random(operation, seed)).flatMap(Optional::stream));
    }

    private static Optional<Asked> random(Operation<?, ?> operation, long seed) {
        RandomRequests drawn = new RandomRequests(seed);
        Asked asked = new Asked(operation, drawn.request(operation.requestType()));
        for (int i = 0; i < REPAIRS; i++) {
            try {
                asked.answer(operation);
                return Optional.of(asked);
            } catch (InvalidRequest invalid) {
                drawn.repair(asked.request(), operation.requestType(), invalid.violations());
            }
        }
        return Optional.empty();
    }

    /** Texts with a blank, by the place where they stand. */
    private static Map<String, String> sentences(JsonNode answer) {
        Map<String, String> found = new TreeMap<>();
        collect("", answer, found);
        return found;
    }

    private static void collect(String place, JsonNode value, Map<String, String> found) {
        if (value.isTextual()) {
            if (value.asText().matches("(?s).*[ \\u00a0].*")) {
                found.put(place, value.asText());
            }
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                collect(place + "/" + i, value.get(i), found);
            }
        } else {
            value.properties().stream().filter(part -> !NO_SENTENCES.contains(part.getKey()))
                    .forEach(part -> collect(place + "/" + part.getKey(), part.getValue(), found));
        }
    }

    /** Nobody who typed degrees reads a hardness in another unit alone. */
    @ParameterizedTest
    @EnumSource(value = HardnessUnit.class, names = {"GERMAN_DEGREE", "FRENCH_DEGREE", "GPG"})
    void statesHardnessInTheUnitOfTheTest(HardnessUnit unit) {
        String own = Language.ENGLISH.unit(unit.symbol());
        Set<String> wrong = new TreeSet<>();
        int[] seen = {0};
        examples().filter(asked -> typed(asked.request())).flatMap(asked -> asked.changed(typedIn(unit, asked.request())).stream())
                .forEach(asked -> sentences(asked.answer(Language.ENGLISH)).forEach((place, sentence) -> {
                    Set<String> units = HARDNESS_UNIT.matcher(sentence).results().map(MatchResult::group).collect(Collectors.toSet());
                    boolean substance = units.equals(Set.of("mg/L")) && SUBSTANCE.matcher(sentence).find();
                    seen[0] += units.contains(own) ? 1 : 0;
                    boolean setting = place.matches("/settings/(reasons/.*|\\d+/shows)|/basis/.*") || sentence.contains("controller");
                    if (!units.isEmpty() && !units.contains(own) && !substance && !setting) {
                        wrong.add(asked.operation().id() + place + ": " + sentence);
                    }
                }));
        assertTrue(seen[0] > 20, "it saw " + seen[0]);
        assertEquals(Set.of(), wrong);
    }

    /** Calcium and magnesium in place of a hardness: the degree of the country. */
    @ParameterizedTest
    @CsvSource({"germany, °dH", "france, °fH", "unitedKingdom, mg/L", "unitedStates, gpg"})
    void statesHardnessInTheDegreeOfTheCountry(String country, String unit) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree("{\"country\": \"" + country + "\", \"water\": {\"calcium\": {\"value\": 80, "
                + "\"unit\": \"mg/L\"}, \"magnesium\": {\"value\": 20, \"unit\": \"mg/L\"}}}");
        Operation<?, ?> compensate = Main.OPERATIONS.stream().filter(each -> each.id().equals("compensateHardness")).findFirst()
                .orElseThrow();
        String summary = new Asked(compensate, request).answer(Language.ENGLISH).path("summary").asText();
        assertTrue(summary.matches(".*The test gives [\\d.]+\u00a0" + unit + "\\..*"), summary);
    }

    private static boolean typed(JsonNode request) {
        return request.findParents("hardness").stream().anyMatch(parent -> parent.path("hardness").has("unit"));
    }

    /** The request with every hardness in {@code unit}, to three digits, and the units of the answer that go with it. */
    private static ObjectNode typedIn(HardnessUnit unit, ObjectNode request) {
        ObjectNode typed = request.deepCopy();
        convert(typed, unit);
        return typed;
    }

    private static void convert(JsonNode node, HardnessUnit unit) {
        if (node.has("water") && node.has("units")) {
            ((ObjectNode) node).put("units", unit == HardnessUnit.GPG ? "us" : "metric");
        }
        node.properties().stream().filter(part -> HARDNESS.contains(part.getKey()) && part.getValue().has("unit")).forEach(part -> {
            HardnessUnit given = Arrays.stream(HardnessUnit.values())
                    .filter(each -> each.symbol().equals(part.getValue().path("unit").asText())).findFirst().orElseThrow();
            double value = unit.fromBase(given.toBase(part.getValue().path("value").asDouble()));
            ((ObjectNode) part.getValue()).put("value", new BigDecimal(value).round(new MathContext(3))).put("unit", unit.symbol());
        });
        node.forEach(part -> convert(part, unit));
    }

    /** What a language says in answers to the examples and to random requests, each with its operation and place. */
    private static Map<Language, Set<String>> said() {
        Map<Language, Set<String>> said = new TreeMap<>(Comparator.comparing(Language::tag));
        List<Language> languages = Stream.of("en", "de", "fr", "es", "es-MX").map(Language::of).toList();
        Stream.concat(examples(), random()).forEach(asked -> {
            Record answer = asked.answer(asked.operation());
            languages.forEach(language -> sentences(tree(WRITER.write(answer, language))).forEach((place, sentence) ->
                    said.computeIfAbsent(language, none -> new TreeSet<>()).add(asked.operation().id() + place.replaceAll("/\\d+", "/#")
                            + ": " + sentence)));
        });
        return said;
    }

    /**
     * Four significant digits at most, but in money and in the constants of a text; in Mexico no word of Spain, by the glossary of the
     * texts. Source: common practice.
     */
    @Test
    void saysNoMoreDigitsThanPeopleReadAndNoWordOfAnotherRegion() {
        Set<String> constants = Language.ENGLISH.texts().values().stream().flatMap(text -> NUMBER.matcher(text).results())
                .map(number -> digits(number.group(), Language.ENGLISH)).collect(Collectors.toSet());
        List<Pattern> ofSpain = Table.read("/dev/brinebook/text/glossary.csv", ';', 4).stream().filter(row -> row[0].equals("es-419"))
                .map(row -> Pattern.compile(row[1], Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)).toList();
        Set<String> wrong = new TreeSet<>();
        Map<Language, Set<String>> said = said();
        said.forEach((language, sentences) -> sentences.forEach(sentence -> NUMBER.matcher(sentence).results()
                .filter(number -> !MONEY.matcher(sentence.substring(number.end())).find())
                .map(number -> digits(number.group(), language))
                .filter(number -> !constants.contains(number) && significant(number) > MOST_DIGITS)
                .forEach(number -> wrong.add(language + " " + number + " in " + sentence))));
        said.get(Language.of("es-MX")).forEach(sentence -> ofSpain.stream().filter(word -> word.matcher(sentence).find())
                .forEach(word -> wrong.add(word + " in " + sentence)));
        assertTrue(said.get(Language.ENGLISH).size() > 1000, "it saw " + said.get(Language.ENGLISH).size());
        assertEquals(Set.of(), wrong);
    }

    private static String digits(String written, Language language) {
        String number = written.replaceAll("[\\u00a0\\u202f]", "");
        return language.number(new BigDecimal("0.5")).contains(",") ? number.replace(',', '.') : number.replace(",", "");
    }

    private static int significant(String number) {
        String bare = number.contains(".") ? number : number.replaceFirst("0+$", "");
        return bare.replace(".", "").replaceFirst("^0+", "").length();
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode tree(byte[] json) {
        try {
            return JSON.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
