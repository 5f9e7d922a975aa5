// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.http.json.JsonReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The committed contract alone is enough to build a form: each range, unit, default and alternative that it states as data is what
 * the service enforces, just inside and just outside (JSON Schema draft 2020-12, section 6.2).
 */
class ContractSufficesTest {

    private static final JsonReader READER = new JsonReader();
    private static final BigDecimal STEP = new BigDecimal("0.000001");
    /** Amounts of money are refused with finer parts. */
    private static final BigDecimal CENT = new BigDecimal("0.01");
    /** A default that is a plain value, as the description says it: a number, with a unit or without; a name; true or false. */
    private static final Pattern PLAIN_DEFAULT = Pattern.compile(".* Default: (-?[\\d,.]+( [\\w/%°]+)?|[a-z][A-Za-z]*)\\.( Absent .*)?");
    private static final Pattern PROSE_RANGE = Pattern.compile(".* (From|Above) -?[\\d,.]+ to [\\d,.]+ \\S+\\..*");
    /** Words that stand alone and are no value. */
    private static final List<String> NO_VALUES = List.of("none", "unknown", "saltStep");

    private static JsonNode document;

    private final List<String> faults = new ArrayList<>();
    private int ranges;
    private int defaults;
    private int alternatives;

    /** A property somewhere in a request, as the frame around its value. */
    private record Place(Operation<?, ?> operation, String before, String after, String pointer) {

        Place at(String name) {
            return new Place(operation, before + "{\"" + name + "\": ", "}" + after, pointer + "/" + name);
        }

        Place first() {
            return new Place(operation, before + "[", "]" + after, pointer + "/0");
        }

        boolean refuses(String value, Code code) {
            return violations(value).stream().anyMatch(fault -> fault.code() == code && (fault.pointer() + "/").startsWith(pointer + "/"));
        }

        List<Violation> violations(String value) {
            try {
                READER.read((before + value + after).getBytes(StandardCharsets.UTF_8), operation.requestType());
                return List.of();
            } catch (InvalidRequest invalid) {
                return invalid.violations();
            }
        }
    }

    @BeforeAll
    static void read() {
        document = Committed.tree(Committed.contract());
    }

    @Test
    void everyRangeUnitDefaultAndAlternativeIsWhatIsEnforced() {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            walk(document.path("paths").path(operation.path()).at("/post/requestBody/content/application~1json/schema"),
                    new Place(operation, "", "", ""));
        }
        assertEquals(List.of(), faults);
        assertTrue(ranges > 500 && defaults > 200 && alternatives > 50, ranges + " ranges, " + defaults + " defaults, " + alternatives
                + " alternatives");
    }

    /** What the description says to people is there as data. */
    @Test
    void saysNoRangeAndNoPlainDefaultInProseAlone() {
        List<String> missing = new ArrayList<>();
        int prose = 0;
        for (var schema : document.at("/components/schemas").properties()) {
            for (var property : schema.getValue().path("properties").properties()) {
                JsonNode facts = property.getValue();
                String text = facts.path("description").asText();
                JsonNode one = facts.has("items") ? facts.path("items") : facts;
                if (PROSE_RANGE.matcher(text).matches()) {
                    prose++;
                    if (!one.has("x-range")) {
                        missing.add(schema.getKey() + "." + property.getKey() + ": " + text);
                    }
                }
                var plain = PLAIN_DEFAULT.matcher(text);
                if (plain.matches() && !NO_VALUES.contains(plain.group(1))) {
                    prose++;
                    if (!facts.has("x-default")) {
                        missing.add(schema.getKey() + "." + property.getKey() + ": " + text);
                    }
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(prose > 100, prose + " seen");
    }

    private void walk(JsonNode schema, Place place) {
        if (schema.has("x-range")) {
            checkRange(schema.path("x-range"), resolved(schema).at("/properties/unit"), place);
        } else if (schema.has("x-default") && schema.path("x-default").isValueNode()) {
            checkDefault(schema.path("x-default"), place);
        }
        if (List.of("number", "integer").contains(schema.path("type").asText())) {
            boolean whole = schema.path("type").asText().equals("integer");
            check(schema, "minimum", "exclusiveMinimum", whole, -1, "", place);
            check(schema, "maximum", "exclusiveMaximum", whole, 1, "", place);
        } else if (schema.path("type").asText().equals("array")) {
            walk(schema.path("items"), place.first());
        } else if (schema.has("$ref")) {
            if (schema.has("x-default")) {
                checkDefault(schema.path("x-default"), place);
            }
            walkObject(resolved(schema), place);
        }
    }

    private void walkObject(JsonNode object, Place place) {
        object.path("oneOf").forEach(kind -> walkObject(resolved(kind), place));
        object.path("x-alternatives").forEach(rule -> checkAlternatives(rule, object, place));
        if (!object.path("properties").has("unit") || !object.path("properties").has("value")) {
            object.path("properties").properties().forEach(property -> walk(property.getValue(), place.at(property.getKey())));
        }
    }

    private static JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? document.at(schema.path("$ref").asText().substring(1)) : schema;
    }

    private void checkRange(JsonNode range, JsonNode units, Place place) {
        String unit = range.has("unit") ? range.path("unit").asText() : "USD";
        if (range.has("unit") && !units.path("enum").toString().contains('"' + unit + '"')) {
            faults.add(place.pointer() + " has no unit " + unit);
        }
        check(range, "minimum", "exclusiveMinimum", false, -1, unit, place);
        check(range, "maximum", "exclusiveMaximum", false, 1, unit, place);
    }

    /** Whether the range is that of all salts, of which each has a narrower one, as the description says. */
    private static boolean dependsOnSalt(Place place) {
        return place.pointer().matches(".*(saltDose|saltDoses/0|meteredSaltDose|SaltDose)");
    }

    /** The bound itself is taken, or not where it is exclusive; a step outwards is refused, a step inwards taken. */
    private void check(JsonNode range, String inclusive, String exclusive, boolean whole, int outwards, String unit, Place place) {
        JsonNode bound = range.has(inclusive) ? range.path(inclusive) : range.path(exclusive);
        if (bound.isMissingNode()) {
            return;
        }
        ranges++;
        BigDecimal step = whole ? BigDecimal.ONE : STEP.multiply(bound.decimalValue().abs().max(BigDecimal.ONE))
                .max(unit.equals("USD") ? CENT : STEP);
        BigDecimal outside = bound.decimalValue().add(step.multiply(BigDecimal.valueOf(outwards)));
        BigDecimal inside = bound.decimalValue().subtract(step.multiply(BigDecimal.valueOf(outwards)));
        expect(place, quantity(outside, unit), true);
        if (!dependsOnSalt(place)) {
            expect(place, quantity(bound.decimalValue(), unit), range.has(exclusive));
            expect(place, quantity(inside, unit), false);
        }
    }

    private static String quantity(BigDecimal value, String unit) {
        return unit.isEmpty() ? value.toPlainString() : "{\"value\": " + value.toPlainString() + ", \"unit\": \"" + unit + "\"}";
    }

    private void expect(Place place, String value, boolean refused) {
        if (place.refuses(value, Code.OUT_OF_RANGE) != refused) {
            faults.add(place.operation().id() + place.pointer() + " " + value + (refused ? " is taken" : " is refused"));
        }
    }

    private void checkDefault(JsonNode value, Place place) {
        defaults++;
        for (Code code : List.of(Code.OUT_OF_RANGE, Code.WRONG_TYPE, Code.UNKNOWN_VALUE)) {
            if (place.refuses(value.toString(), code)) {
                faults.add(place.operation().id() + place.pointer() + " refuses its own default " + value);
            }
        }
    }

    /** None of them, and the first properties of two of them at once. */
    private void checkAlternatives(JsonNode rule, JsonNode object, Place place) {
        alternatives++;
        JsonNode names = rule.has("oneOf") ? rule.path("oneOf") : rule.path("anyOf");
        TreeSet<String> all = new TreeSet<>();
        names.forEach(each -> each.forEach(name -> all.add(name.asText())));
        if (!object.path("properties").properties().stream().map(property -> property.getKey()).toList().containsAll(all)) {
            faults.add(place.pointer() + " has not all of " + all);
        }
        String kind = kind(object);
        boolean missing = place.violations("{" + kind + "}").stream().anyMatch(fault -> fault.code() == Code.MISSING
                && fault.pointer().equals(place.pointer() + "/" + names.get(0).get(0).asText()));
        if (rule.path("required").asBoolean() && !missing && object.path("required").isEmpty()) {
            faults.add(place.operation().id() + place.pointer() + " does without " + all);
        }
        List<String> two = new ArrayList<>(kind.isEmpty() ? List.of() : List.of(kind));
        List.of(0, 1).forEach(each -> names.get(each).forEach(name -> two.add("\"" + name.asText() + "\": "
                + sample(object.at("/properties/" + name.asText())))));
        boolean refused = place.violations("{" + String.join(", ", two) + "}").stream().anyMatch(fault -> fault.code() == Code.INCONSISTENT
                && fault.pointer().equals(place.pointer() + "/" + names.get(1).get(0).asText()));
        if (refused != rule.has("oneOf")) {
            faults.add(place.operation().id() + place.pointer() + (refused ? " refuses" : " takes") + " two of " + all + ": " + two);
        }
    }

    /** A value of a schema, of which only its being there matters. */
    private static String sample(JsonNode schema) {
        if (schema.has("examples")) {
            return schema.path("examples").get(0).toString();
        }
        JsonNode target = resolved(schema);
        if (schema.path("type").asText().equals("array")) {
            return Collections.nCopies(Math.max(1, schema.path("minItems").asInt()), sample(schema.path("items"))).toString();
        }
        if (target.at("/properties/unit").has("enum")) {
            return quantity(schema.at("/x-range/maximum").decimalValue(), schema.at("/x-range/unit").asText());
        }
        return target.has("properties") ? "{}" : target.path("minimum").asText("1");
    }

    /** The property that says which kind an object is, of an object that has kinds. */
    private static String kind(JsonNode object) {
        return object.path("properties").properties().stream().filter(property -> property.getValue().path("enum").size() == 1)
                .map(property -> "\"" + property.getKey() + "\": " + property.getValue().path("enum").get(0)).findFirst().orElse("");
    }
}
