// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The figures that matter: each is one of its answer, and none is rounded otherwise than its kind. */
class FigureTableTest {

    /** An answer of an operation that the table does not list. */
    public record Unlisted(@Property("What.") Message summary, @Property("Yes.") Boolean fits, @Property("Days.") BigDecimal hardDays,
            @Property("Part.") Part part, @Property("Parts.") List<Part> parts) {
    }

    public record Part(@Property("Name.") String name, @Property("Number.") BigDecimal number) {
    }

    static List<Operation<?, ?>> operations() {
        return Main.OPERATIONS;
    }

    @ParameterizedTest
    @MethodSource("operations")
    void pointsAtComponentsOfTheAnswer(Operation<?, ?> operation) {
        for (String line : FigureTable.lines().getOrDefault(operation.id(), List.of())) {
            boolean rows = line.matches("[*+] .*");
            Type from = rows ? element(at(operation.answerType(), line.split("[ ?]")[1])) : operation.answerType();
            Matcher slot = FigureTable.SLOT.matcher(rows ? line.substring(line.indexOf(" | ")) : line);
            assertTrue(slot.find(), line);
            do {
                assertNotNull(at(from, slot.group(1)), operation.id() + ": " + slot.group());
            } while (slot.find());
        }
    }

    private static Type at(Type from, String pointer) {
        Type here = from;
        for (String name : pointer.split("/")) {
            if (!name.isEmpty()) {
                here = name.matches("\\d+") ? element(here) : component((Class<?>) here, name, pointer);
            }
        }
        return here;
    }

    private static Type component(Class<?> type, String name, String pointer) {
        return Arrays.stream(type.getRecordComponents()).filter(one -> one.getName().equals(name)).findFirst()
                .map(RecordComponent::getGenericType).orElseThrow(() -> new AssertionError(type + " has no " + name + ": " + pointer));
    }

    private static Type element(Type list) {
        return ((ParameterizedType) list).getActualTypeArguments()[0];
    }

    @Test
    void hasAGeneralRuleForAnOperationThatIsNotListed() {
        Part part = new Part("x \"y\"", new BigDecimal("1234.567"));
        List<String> lines = new FigureTable(new ValueText(Language.ENGLISH), name -> false).figures("unheardOf",
                new Unlisted(Message.verbatim("quoted "
                        + "alone"), true, new BigDecimal("12.345"), part, List.of(part, part, part, part, part)));
        String named = "name \u201cx \u2019y\u2019\u201d; number 1,230";
        assertEquals(List.of("fits: yes", "hardDays: 12", "part: " + named, "parts: " + named, "parts: " + named, "parts: " + named,
                "parts: " + named), lines);
    }

    /**
     * For people as {@code api.Text} rounds the sentences: hard days below ten to a tenth, years to a half, other numbers to three
     * digits.
     */
    @ParameterizedTest
    @CsvSource({"hardDays, 5.435, FOR_PEOPLE, 5.4", "hardDays, 55.153, FOR_PEOPLE, 55", "simplePaybackYears, 3.4, FOR_PEOPLE, 3.5",
        "simplePaybackYears, 1.47579, FOR_PEOPLE, 1.5", "fullChargeDays, 6.32421, FOR_PEOPLE, 6.5", "regenerations, 121.667, "
                + "FOR_PEOPLE, 122",
        "share, 0.636246, FOR_PEOPLE, 0.636", "share, 0.636246, FOUR_DIGITS, 0.6362", "share, 0.636246, SETTING, 0.636",
        "salt, 9.125, SETTING, 9.125", "capacity, 29712, SETTING, '29,712'"})
    void roundsByTheKindOfANumber(String name, BigDecimal number, ValueText.Rounding rounding, String said) {
        assertEquals(said, new ValueText(Language.ENGLISH).of(number, name, rounding));
    }
}
