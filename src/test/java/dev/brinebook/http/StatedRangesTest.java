// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import dev.brinebook.text.Language;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A range is said in the unit that the caller used, and a bound that it says is taken when it is sent. */
class StatedRangesTest {

    private static final String HUGE = "1234567890000000000";
    private static final Pattern ALLOWED = Pattern.compile("(?:from|above) (\\S+) (?:and up )?to (\\S+)\u00a0(.+)");
    private static final JsonReader READER = new JsonReader();

    /** A quantity with a range somewhere in a request, as the frame around its JSON. */
    private record Place(Class<? extends Record> type, String before, String after, String pointer, Class<?> unitType) {

        String with(String value, Unit unit) {
            return before + "{\"value\": " + value + ", \"unit\": \"" + unit.symbol() + "\"}" + after;
        }

        List<Violation> outOfRange(String value, Unit unit) {
            return faults(type, with(value, unit)).stream().filter(fault -> fault.code() == Code.OUT_OF_RANGE
                    && (fault.pointer() + "/").startsWith(pointer + "/")).toList();
        }
    }

    private static List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            add(operation.requestType(), operation.requestType(), "", "", "", places);
        }
        return places;
    }

    private static void add(Class<? extends Record> root, Class<?> type, String before, String after, String pointer,
            List<Place> places) {
        for (RecordComponent component : type.getRecordComponents()) {
            boolean list = component.getGenericType() instanceof ParameterizedType;
            Type bare = list ? ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0] : component.getType();
            String start = before + "{\"" + component.getName() + "\": " + (list ? "[" : "");
            String end = (list ? "]" : "") + "}" + after;
            String at = pointer + "/" + component.getName() + (list ? "/0" : "");
            Class<?> element = (Class<?>) bare;
            if (Quantity.class.isAssignableFrom(element)) {
                Property property = component.getAnnotation(Property.class);
                Class<?> unit = element.getRecordComponents()[1].getType();
                if (unit.isEnum() && property.max() < Double.POSITIVE_INFINITY) {
                    places.add(new Place(root, start, end, at, unit));
                }
            } else if (element.isAnnotationPresent(SchemaDescription.class)) {
                add(root, element, start, end, at, places);
            }
        }
    }

    @Test
    void everyRangeOfAQuantityIsSaidInTheCallersUnitAndItsBoundsAreTaken() {
        List<String> wrong = new ArrayList<>();
        int checked = 0;
        for (Place place : places()) {
            for (Object constant : place.unitType().getEnumConstants()) {
                Unit unit = (Unit) constant;
                List<Violation> faults = place.outOfRange(HUGE, unit);
                String allowed = faults.size() == 1 && faults.get(0).allowed() != null ? faults.get(0).allowed().get(0).toString() : "";
                Matcher range = ALLOWED.matcher(allowed);
                boolean matches = range.matches() && range.group(3).equals(Language.ENGLISH.unit(unit.symbol()))
                        && faults.get(0).message().toString().contains(
                                Language.ENGLISH.number(new BigDecimal(HUGE)) + "\u00a0" + Language.ENGLISH.unit(unit.symbol()) + ".");
                if (!matches || !place.outOfRange(json(range.group(2)), unit).isEmpty()
                        || allowed.startsWith("from") && !place.outOfRange(json(range.group(1)), unit).isEmpty()) {
                    wrong.add(place.pointer() + " in " + unit.symbol() + ": " + faults);
                }
                checked++;
            }
        }
        assertTrue(checked > 500, checked + " ranges");
        assertEquals(List.of(), wrong);
    }

    private static String json(String number) {
        return number.replace(",", "").replace('\u2212', '-');
    }

    /** 3 to 20 lb/ft3 of sodium chloride: the tables of the trade, as resin/CapacityTable has them; 16.02 g/L make 1 lb/ft3. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "saltDose": {"value": 21, "unit": "lb/ft3"}           | /softener/saltDose           | from 3 to 20 lb/ft³
            "saltDose": {"value": 900, "unit": "lb/ft3"}          | /softener/saltDose           | from 3 to 20 lb/ft³
            "saltDose": {"value": 2, "unit": "g/L"}               | /softener/saltDose           | from 48.06 to 320.3 g/L
            "saltPerRegeneration": {"value": 50, "unit": "lb"}    | /softener/saltPerRegeneration | from 6 to 40 lb
            "saltPerRegeneration": {"value": 1, "unit": "kg"}     | /softener/saltPerRegeneration | from 2.722 to 18.14 kg
            """)
    void aDoseOfSaltIsSaidAsTheCallerGaveIt(String salt, String pointer, String allowed) {
        String softener = "\"resinVolume\": {\"value\": 2, \"unit\": \"ft3\"}, ";
        List<Violation> faults = faults(Main.OPERATIONS.stream().filter(one -> one.id().equals("reviewSettings")).findFirst()
                .orElseThrow().requestType(), "{\"softener\": {" + softener + salt + "}}").stream()
                .filter(fault -> fault.pointer().contains("alt")).toList();
        assertEquals(List.of(pointer), faults.stream().map(Violation::pointer).toList());
        assertEquals(allowed, faults.get(0).allowed().get(0).toString().replace('\u00a0', ' '));
        assertTrue(faults.get(0).message().toString().replace('\u00a0', ' ').startsWith("Must be " + allowed + " with this salt"),
                faults.toString());
    }

    /** Every whole number that a double holds exactly, 2 to the 53rd less one (IEEE 754): the next is another one. */
    @ParameterizedTest
    @CsvSource({"9007199254740991, true", "9007199254740992, false", "9007199254740993, false", "0, true", "-1, false"})
    void aWholeNumberIsHeldToItsLastDigit(String seed, boolean taken) {
        List<Violation> faults = faults(Main.OPERATIONS.stream().filter(one -> one.id().equals("assess")).findFirst()
                .orElseThrow().requestType(), "{\"seed\": " + seed + "}").stream()
                .filter(fault -> fault.pointer().equals("/seed")).toList();
        assertEquals(taken, faults.isEmpty(), faults.toString());
        faults.forEach(fault -> assertEquals("from 0 to 9,007,199,254,740,991", fault.allowed().get(0).toString()));
    }

    private static List<Violation> faults(Class<? extends Record> type, String body) {
        try {
            READER.read(body.getBytes(StandardCharsets.UTF_8), type);
            return List.of();
        } catch (InvalidRequest invalid) {
            return invalid.violations();
        }
    }
}
