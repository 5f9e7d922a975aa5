// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.Temporal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar file by RFC 5545, read back; {@code .ci/run} gives it to another's parser too. */
class CalendarFileTest {

    private static final String PATH = "/v1/regeneration-schedule";

    private static String file(String request) {
        byte[] bytes = TestServer.post(PATH, request, "text/calendar").then().statusCode(200).extract().asByteArray();
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static Calendar parse(String file) {
        try {
            Calendar calendar = new CalendarBuilder().build(new StringReader(file));
            assertFalse(calendar.validate(true).hasErrors(), () -> calendar.validate(true).toString());
            return calendar;
        } catch (Exception e) {
            throw new AssertionError(file, e);
        }
    }

    private static String value(Component component, String property) {
        return component.getProperty(property).map(Property::getValue).orElse(null);
    }

    private static List<VEvent> events(Calendar calendar, String category) {
        return calendar.<VEvent>getComponents("VEVENT").stream()
                .filter(event -> category.equals(value(event, "CATEGORIES"))).toList();
    }

    private static Temporal start(VEvent event) {
        return event.getDateTimeStart().getDate();
    }

    private static String dates(List<VEvent> events) {
        return events.stream().map(event -> LocalDate.from(start(event)).toString()).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "holiday-cabin"})
    void holdsTheRegenerationsAndPurchasesOfTheFirstPolicy(String name) {
        String request = TestServer.example("scheduleRegeneration." + name);
        JsonPath json = TestServer.post(PATH, request).extract().jsonPath();
        Calendar calendar = parse(file(request));
        List<VEvent> regenerations = events(calendar, "regeneration");
        assertEquals(json.getInt("policies[0].totals.regenerations"), regenerations.size());
        assertEquals(String.join(" ", json.getList("policies[0].events.date", String.class)), dates(regenerations));
        List<VEvent> salt = events(calendar, "salt");
        assertEquals(String.join(" ", json.getList("policies[0].salt.purchases.date", String.class)), dates(salt));
        int bags = salt.stream().mapToInt(event -> Integer.parseInt(value(event, "SUMMARY")
                .replaceAll(".*: (\\d+) bags? of.*", "$1"))).sum();
        assertEquals(json.getInt("policies[0].salt.bags"), bags);
        int hour = json.getInt("policies[0].regenerationHour");
        assertTrue(regenerations.stream().allMatch(event -> ((LocalDateTime) start(event)).getHour() == hour));
        assertTrue(salt.stream().allMatch(event -> start(event) instanceof LocalDate));
        String first = json.getString("firstDate").replace("-", "") + "T000000Z";
        calendar.getComponents("VEVENT").forEach(event -> assertEquals(first, value(event, "DTSTAMP")));
    }

    /** The minutes set in the request, 10 + 60 + 10 + 15, last 95. */
    @Test
    void lastsAsLongAsTheCycle() {
        VEvent event = events(parse(file(TestServer.example("scheduleRegeneration.well-family"))), "regeneration").get(0);
        Temporal end = event.getDateTimeEnd().getDate();
        assertEquals(Duration.ofMinutes(95), Duration.between(start(event), end));
    }

    /** Section 3.1 (lines and octets), 3.6 (PRODID, VERSION), 3.7.2 (no METHOD), 3.8.4.7 (UID). */
    @Test
    void keepsTheFormOfTheStandard() {
        String name = "\\u6c34; a, b\\\\c \\\"d\\\" \\ud83d\\udca7 e".repeat(2);
        String file = file(constant("\"days\": 30, \"policies\": [{\"name\": \"" + name + "\", \"control\": {\"kind\": "
                + "\"clock\", \"everyDays\": 4}}]"));
        assertEquals(file.replace("\r\n", "").length(), file.replaceAll("[\r\n]", "").length(), "only whole line breaks");
        for (String line : file.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
        Calendar calendar = parse(file);
        assertEquals("2.0", calendar.getProperty("VERSION").map(Property::getValue).orElseThrow());
        assertTrue(calendar.getProperty("PRODID").isPresent());
        assertTrue(calendar.getProperty("METHOD").isEmpty());
        assertEquals("Water softener: \u201c" + "\u6c34; a, b\\c \u2019d\u2019 \ud83d\udca7 e".repeat(2) + "\u201d",
                calendar.getProperty("NAME").map(Property::getValue).orElseThrow());
        assertEquals(calendar.getComponents().size(), uids(calendar).size());
        assertEquals(7, events(calendar, "regeneration").size());
    }

    @Test
    void dropsNothingOfTheLongestSchedule() {
        String request = constant("\"days\": 1096, \"policies\": [{\"name\": \"nightly\", \"control\": {\"kind\": "
                + "\"clock\", \"everyDays\": 1}}]");
        Calendar calendar = parse(file(request));
        assertEquals(1096, events(calendar, "regeneration").size());
        assertEquals(3, events(calendar, "service").size());
        assertEquals(calendar.getComponents().size(), uids(calendar).size());
    }

    /** A meter that starts at once does so in the hours of use, which are not known beforehand. */
    @Test
    void whatStartsAtOnceTakesTheDay() {
        String request = constant("\"days\": 30, \"policies\": [{\"name\": \"at once\", "
                + "\"control\": {\"kind\": \"meteredImmediate\"}}]");
        List<VEvent> events = events(parse(file(request)), "regeneration");
        assertTrue(dates(events).startsWith("2026-01-08 "), "24,000 gr at 3,000 gr a day");
        assertEquals(String.join(" ", TestServer.post(PATH, request).extract().jsonPath()
                .getList("policies[0].events.date", String.class)), dates(events));
        assertTrue(events.stream().allMatch(event -> start(event) instanceof LocalDate));
    }

    /** 300 gal at 30 gpg load 9,000 gr a day on 24,000 / 5 gr, with salt for little more than two regenerations. */
    @Test
    void distinguishesSeveralEventsOnOneDay() {
        Calendar calendar = parse(file(constant("\"days\": 30, \"policies\": [{\"name\": \"at once\", "
                + "\"control\": {\"kind\": \"meteredImmediate\"}}], \"prices\": {\"saltBag\": {\"price\": {\"value\": 1, "
                + "\"unit\": \"USD\"}, \"mass\": {\"value\": 1, \"unit\": \"kg\"}}}")
                .replace("\"value\": 1, \"unit\": \"ft3\"", "\"value\": 0.2, \"unit\": \"ft3\"").replace("100,", "300,")
                .replace("\"saltDose\"", "\"brineTankCapacity\": {\"value\": 2, \"unit\": \"kg\"}, \"saltDose\"")));
        for (String category : List.of("regeneration", "salt")) {
            List<VEvent> events = events(calendar, category);
            assertTrue(events.size() > 30, category);
        }
        assertEquals(calendar.getComponents().size(), uids(calendar).size());
    }

    @Test
    void anEventKeepsItsUidWhenTheDoseChangesButNotInAnotherHousehold() {
        String control = "\"days\": 365, \"policies\": [{\"name\": \"%s\", \"control\": {\"kind\": \"clock\", "
                + "\"everyDays\": 4, \"regenerationHour\": %d}}]";
        String request = constant(control.formatted("a", 2));
        Set<String> uids = uids(parse(file(request)));
        assertEquals(uids, uids(parse(file(constant(control.formatted("a", 3)).replace("\"value\": 8,", "\"value\": 8.001,")))));
        for (String other : List.of(constant(control.formatted("b", 2)), request.replace("\"value\": 30,", "\"value\": 29,"),
                request.replace("\"value\": 100,", "\"value\": 101,"), request.replace("\"value\": 1,", "\"value\": 1.1,"),
                request.replace("\"days\"", "\"seed\": 2, \"days\""))) {
            Set<String> common = new HashSet<>(uids(parse(file(other))));
            assertNotEquals(request, other);
            common.retainAll(uids);
            assertEquals(Set.of(), common, other);
        }
    }

    @Test
    void remindsOfTheBacteriaTestOfAWellAndOfTheResinCleaner() {
        Calendar calendar = parse(file(TestServer.example("scheduleRegeneration.well-family")
                .replace("\"days\": 120", "\"days\": 365")));
        assertEquals("2026-01-01 2027-01-01", dates(events(calendar, "water test")));
        assertTrue(events(calendar, "service").stream().anyMatch(event -> value(event, "SUMMARY").contains("resin cleaner")));
        assertTrue(calendar.getProperty("DESCRIPTION").map(Property::getValue).orElseThrow().contains("bacteria"));
    }

    /** 47 lb cannot take a bag of 40 lb beside the 8 lb of a regeneration. */
    @Test
    void statesWhyItHasNoPurchases() {
        Calendar calendar = parse(file(constant("\"days\": 30, \"policies\": [{\"name\": \"a\", \"control\": {\"kind\": "
                + "\"clock\", \"everyDays\": 4}}]").replace("\"saltDose\"",
                "\"brineTankCapacity\": {\"value\": 47, \"unit\": \"lb\"}, \"saltDose\"")));
        assertEquals(List.of(), events(calendar, "salt"));
        assertTrue(calendar.getProperty("DESCRIPTION").map(Property::getValue).orElseThrow().contains("48\u00a0lb"));
    }

    private static Set<String> uids(Calendar calendar) {
        return calendar.getComponents().stream().map(event -> value(event, "UID")).collect(Collectors.toSet());
    }

    /** 100 gal at 30 gpg a day on 24,000 gr, from 2026-01-01 on. */
    private static String constant(String rest) {
        return """
                {"water": {"hardness": {"value": 30, "unit": "gpg"}},
                 "household": {"dailyUse": {"value": 100, "unit": "gal"}, "dayToDayVariation": 0},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 8, "unit": "lb/ft3"}},
                """ + rest + "}";
    }
}
