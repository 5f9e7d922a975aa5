// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Meter readings over HTTP; the year that is read is made here, so the truth is known. */
class ReadMeterTest {

    private static final String PATH = "/v1/meter-readings";
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final ZonedDateTime NEW_YEAR = ZonedDateTime.of(2025, 1, 1, 0, 0, 0, 0, BERLIN);
    /** 365 days of 24 hours: the hour lost in March comes back in October. */
    private static final int HOURS = 8_760;

    private static int[] hourlyLitres() {
        Random random = new Random(6);
        return IntStream.range(0, HOURS).map(i -> {
            int hour = NEW_YEAR.plusHours(i).getHour();
            return hour >= 2 && hour < 5 ? 0 : random.nextInt(41);
        }).toArray();
    }

    private static TreeMap<LocalDate, Integer> daily(int[] hours) {
        TreeMap<LocalDate, Integer> days = new TreeMap<>();
        for (int i = 0; i < hours.length; i++) {
            days.merge(NEW_YEAR.plusHours(i).toLocalDate(), hours[i], Integer::sum);
        }
        return days;
    }

    private static Map<LocalDate, Double> daysOf(JsonPath answer) {
        List<LocalDate> missing = missing(answer);
        List<Number> values = answer.getList("days.values");
        Map<LocalDate, Double> days = new TreeMap<>();
        LocalDate date = LocalDate.parse(answer.getString("days.firstDate"));
        for (Number value : values) {
            while (missing.contains(date)) {
                date = date.plusDays(1);
            }
            days.put(date, value.doubleValue());
            date = date.plusDays(1);
        }
        return days;
    }

    private static List<LocalDate> missing(JsonPath answer) {
        List<String> dates = answer.getList("days.missing");
        return dates == null ? List.of() : dates.stream().map(LocalDate::parse).toList();
    }

    private static JsonPath read(String csv, String query) {
        return TestServer.postCsv(PATH + query, csv).statusCode(200).extract().jsonPath();
    }

    /**
     * Hours on the clock of Berlin, through both clock changes; the register starts again at 100,000; holes of 5 hours, of
     * 30 hours and of four days. Every day that readings fill has the volume that was made, the others are missing, and each
     * row that was corrected is listed by its line.
     */
    @Test
    void aYearOfHoursComesOutWithTheRightDays() {
        int[] hours = hourlyLitres();
        StringBuilder csv = new StringBuilder("at,reading\r\n");
        Map<Integer, Integer> lineOfHour = new TreeMap<>();
        int register = 20_000;
        int line = 1;
        for (int i = 0; i <= HOURS; i++) {
            boolean hole = i > 1_000 && i < 1_006 || i > 3_010 && i < 3_041 || i > 6_000 && i < 6_096;
            if (!hole) {
                line++;
                lineOfHour.put(i, line);
                csv.append(NEW_YEAR.plusHours(i).toLocalDateTime()).append(',').append(register % 100_000).append("\r\n");
            }
            register += i < HOURS ? hours[i] : 0;
        }
        assertTrue(csv.length() < 262_144, "a year of hours fits the body: " + csv.length());
        JsonPath answer = read(csv.toString(), "?unit=L&timeZone=Europe/Berlin&rolloverAt=100000&units=metric");

        TreeMap<LocalDate, Integer> truth = daily(hours);
        TreeSet<LocalDate> gone = new TreeSet<>();
        for (int[] hole : new int[][] {{3_010, 3_041}, {6_000, 6_096}}) {
            for (int i = hole[0]; i < hole[1]; i++) {
                gone.add(NEW_YEAR.plusHours(i).toLocalDate());
            }
        }
        assertEquals(List.copyOf(gone), missing(answer));
        Map<LocalDate, Double> days = daysOf(answer);
        assertEquals(365 - gone.size(), days.size());
        days.forEach((date, litres) -> assertEquals(truth.get(date), litres, 1e-9, date.toString()));
        assertEquals(365, answer.getInt("coverage.days"));
        List<Number> gaps = answer.getList("coverage.gaps.volume.value");
        assertEquals(gone.stream().mapToInt(truth::get).sum(),
                gaps.stream().mapToDouble(Number::doubleValue).sum(), 0.02, "the register gives the total of each gap");

        int turned = register - 100_000;
        assertTrue(turned > 0 && turned < 100_000, "it starts again once");
        int rollover = 0;
        for (int counted = 20_000; counted < 100_000; rollover++) {
            counted += hours[rollover];
        }
        int twice = IntStream.range(0, HOURS).filter(i -> NEW_YEAR.plusHours(i).toLocalDateTime()
                .equals(LocalDateTime.of(2025, 10, 26, 2, 0))).findFirst().orElseThrow();
        List<String> told = List.of(lineOfHour.get(1_006) + " bridged", lineOfHour.get(rollover) + " rollover",
                lineOfHour.get(twice) + " ambiguousTimeEarlier", lineOfHour.get(twice + 1) + " ambiguousTimeLater");
        List<Map<String, Object>> rows = answer.getList("coverage.rows");
        assertEquals(told.stream().sorted().toList(), rows.stream().map(row -> row.get("row") + " " + row.get("code"))
                .sorted().collect(Collectors.toList()));
        assertTrue(rows.stream().allMatch(row -> row.get("action").equals("repaired")));
        assertEquals(List.of(), answer.getList("findings"), "water stops every night, and the days are alike");
    }

    /** The same year as volumes with their offset: nothing needs repair, and every day is there. */
    @Test
    void aYearOfVolumesWithOffsetsNeedsNoRepair() {
        int[] hours = hourlyLitres();
        String csv = IntStream.range(0, HOURS).mapToObj(i -> {
            ZonedDateTime at = NEW_YEAR.plusHours(i);
            return at.toLocalDateTime() + at.getOffset().toString() + "," + hours[i];
        }).collect(Collectors.joining("\n", "at,volume\n", "\n"));
        JsonPath answer = read(csv, "?unit=L&timeZone=Europe/Berlin&units=metric&detail=full");
        assertEquals(List.of(), answer.getList("coverage.rows"));
        TreeMap<LocalDate, Integer> truth = daily(hours);
        daysOf(answer).forEach((date, litres) -> assertEquals(truth.get(date), litres, 1e-9, date.toString()));
        assertEquals(365, daysOf(answer).size());
        assertEquals(60, answer.getInt("assumptions.find { it.pointer == '/meter/intervalMinutes' }.value"));
        assertEquals("minutes", answer.getString("assumptions.find { it.pointer == '/meter/intervalMinutes' }.unit"));
        assertEquals("Europe/Berlin", answer.getString("assumptions.find { it.pointer == '/meter/timeZone' }.code"));
    }

    private static String json(String kind, String meter, String readings) {
        return "{\"meter\": {\"unit\": \"L\"" + meter + "}, \"kind\": \"" + kind + "\", \"readings\": [" + readings
                + "], \"units\": \"metric\"}";
    }

    private static String volumes(int size, IntToDoubleFunction litres) {
        return IntStream.range(0, size).mapToObj(i -> "{\"at\": \"" + LocalDate.of(2025, 1, 6).plusDays(i)
                + "\", \"value\": " + litres.applyAsDouble(i) + "}").collect(Collectors.joining(","));
    }

    @Test
    void theAnswerCanBeUsedAsARequest() throws JsonProcessingException {
        JsonPath answer = TestServer.post(PATH, TestServer.example("readMeter.apartment")).statusCode(200).extract().jsonPath();
        String water = "{\"water\": {\"hardness\": {\"value\": 17, \"unit\": \"dH\"}}, \"units\": \"metric\", \"household\": ";
        String forecast = new ObjectMapper().writeValueAsString(answer.getMap("forecast"));
        TestServer.post("/v1/softener-sizing", water + forecast + "}").statusCode(200);
        double atHome = answer.getList("forecast.weeklyUse.value", Double.class).stream().mapToDouble(x -> x).average().orElse(0);
        assertEquals(answer.getDouble("estimates.mean.value"), atHome * (1 - answer.getDouble("estimates.emptyShare")), 3,
                "the mean of all days, weekdays counted alike");
        String series = "{\"dailySeries\": {\"firstDate\": \"" + answer.getString("days.firstDate") + "\", \"unit\": \"L\","
                + " \"values\": " + answer.getList("days.values") + ", \"missing\": "
                + missing(answer).stream().map(date -> "\"" + date + "\"").toList() + "}}";
        TestServer.post("/v1/softener-sizing?detail=full", water + series + "}").statusCode(200)
                .body("assumptions.pointer", hasItem("/household/dailySeries/missing"));
    }

    /** Two days of 6,000 L in 60 of about 300: listed with what is above 4 x the median, and left out of the forecast. */
    @Test
    void daysOfALeakAreListedAndLeftOutOfTheForecast() {
        Random random = new Random(5);
        double[] noise = random.doubles(60, -60, 60).toArray();
        IntToDoubleFunction even = i -> 300 + noise[i];
        JsonPath without = TestServer.post(PATH, json("volume", "", volumes(60, even))).statusCode(200).extract().jsonPath();
        assertEquals(List.of(), without.getList("highDays"));
        JsonPath with = TestServer.post(PATH, json("volume", "", volumes(60, i -> i == 20 || i == 41 ? 6_000 : even.applyAsDouble(i))))
                .statusCode(200).body("highDays.date", equalTo(List.of("2025-01-26", "2025-02-16")))
                .body("highDays[1].use.value", near(6_000, 0, "as read")).body("highDays[1].above.value", near(4_800, 60, "less 4 x 300"))
                .body("findings.code", equalTo(List.of("highDays"))).extract().jsonPath();
        assertEquals("On 2 days, more than four times the usual was used. The highest was 6,000\u00a0L on January 26, 2025. Look for a"
                + " leak, unless something was filled.", with.getString("findings[0].message"));
        assertTrue(with.getString("summary").endsWith(with.getString("findings[0].message")));
        double mean = with.getList("forecast.weeklyUse.value", Double.class).stream().mapToDouble(x -> x).average().orElse(0);
        assertEquals(300 * (1 + 2 * 3 / 60.0), mean, 6, "each of the two is weighted as four days");
    }

    /** The same four people in two countries, and a country that has none. */
    @Test
    void peopleOfACountryHelpTheForecast() {
        String body = json("volume", "", volumes(7, i -> 500)).replaceFirst("\\{", "{\"people\": 4, ");
        double usual = TestServer.post(PATH, body).statusCode(200).body("usual.usualPerPerson.value", near(227.1, 0.1, "60 gal"))
                .extract().jsonPath().getDouble("forecast.weeklyUse[0].value");
        double german = TestServer.post(PATH, body.replaceFirst("\\{", "{\"country\": \"germany\", ")).statusCode(200)
                .body("usual.usualPerPerson.value", near(121, 0, "BDEW 2023")).extract().jsonPath()
                .getDouble("forecast.weeklyUse[0].value");
        assertTrue(german > 490 && german < 502 && usual > 540 && usual < 660, german + " and " + usual);
    }

    @Test
    void aChangeOfLevelIsAFindingAndTheForecastFollowsIt() {
        Random random = new Random(3);
        double[] noise = random.doubles(120, -40, 40).toArray();
        TestServer.post(PATH + "?detail=full", json("volume", "", volumes(120, i -> (i < 70 ? 250 : 400) + noise[i]))).statusCode(200)
                .body("findings.code", equalTo(List.of("levelChanged")))
                .body("findings[0].firstDate", equalTo("2025-03-17"))
                .body("findings[0].perDay.value", near(400, 12, "made so"))
                .body("findings[0].before.value", near(250, 12, "made so"))
                .body("forecast.weeklyUse[0].value", near(400, 25, "the level since, by seven Mondays"))
                .body("assumptions.find { it.name == 'estimatedFrom' }.code", equalTo("2025-03-17"));
    }

    @Test
    void aDriftIsAFinding() {
        Random random = new Random(4);
        double[] noise = random.doubles(120, -40, 40).toArray();
        TestServer.post(PATH, json("volume", "", volumes(120, i -> 250 + i + noise[i]))).statusCode(200)
                .body("findings.code", equalTo(List.of("drift")))
                .body("findings[0].perDay.value", near(30, 6, "a litre a day, in 30 days"))
                .body("findings[0].message", containsString("rises steadily"));
        TestServer.post(PATH, json("volume", "", volumes(120, i -> 450 - i + noise[i]))).statusCode(200)
                .body("findings[0].message", containsString("falls steadily"));
    }

    /** Two weeks of hours that never go below 3 L: 72 L a day, from a tap that runs or a leak. */
    @Test
    void waterThatRunsAllNightIsAFindingAndACaution() {
        List<String> rows = new ArrayList<>();
        for (int hour = 0; hour < 14 * 24; hour++) {
            rows.add(LocalDateTime.of(2026, 1, 1, 0, 0).plusHours(hour) + "," + (hour % 24 < 6 ? 3 : 3 + hour % 17));
        }
        JsonPath answer = read("at,volume\n" + String.join("\n", rows), "?unit=L&units=metric");
        assertEquals("nightFlow", answer.getString("findings[0].code"));
        assertEquals(72, answer.getDouble("findings[0].perDay.value"));
        assertEquals(List.of("leakSuspected"), answer.getList("cautions.code"));
        assertTrue(answer.getString("summary").contains("never stopped"));
    }

    @Test
    void useThatIsFarFromUsualIsAFinding() {
        String body = json("volume", "", volumes(5, i -> 3_000)).replaceFirst("\\{", "{\"people\": 2, ");
        TestServer.post(PATH, body).statusCode(200).body("findings.code", equalTo(List.of("unusualUse")))
                .body("usual.perPerson.value", near(1_500, 1e-6, "3,000 over two"))
                .body("estimates.gammaShape.reason", equalTo("daysDoNotDiffer"));
    }

    @Test
    void extremesOfUseAreAnswered() {
        TestServer.post(PATH, json("volume", "", volumes(40, i -> 0))).statusCode(200)
                .body("estimates.gammaShape.reason", equalTo("nobodyThere")).body("forecast.weeklyUse[6].value", near(0, 0, "dry"));
        JsonPath much = TestServer.post(PATH, json("volume", "", volumes(40, i -> 44_000))).statusCode(200).extract().jsonPath();
        assertFalse(much.getMap("").containsKey("forecast"), "15,000 L a day are the most that a household takes");
        TestServer.post(PATH + "?detail=full", json("volume", "", volumes(700, i -> i % 10 == 0 ? 9_000 : 100))).statusCode(200)
                .body("forecast.dayToDayVariation", near(1.5, 0, "held to the highest that is taken"))
                .body("assumptions.find { it.name == 'forecastDayToDayVariation' }.value", near(1.5, 0, "as in the forecast"));
        TestServer.post(PATH, json("volume", "", volumes(364, i -> i % 7 < 5 ? 0 : 600))).statusCode(200)
                .body("estimates.emptyDays", equalTo(0)).body("estimates.weekendRatio", nullValue())
                .body("forecast.weeklyUse[4].value", near(0, 0, "idle")).body("forecast.weeklyUse[5].value", near(600, 0, "not"))
                .body("forecast.dayToDayVariation", near(0, 0, "weekends are alike")).body("forecast.occupancy", nullValue());
    }

    @Test
    void faultsOfJsonAreReportedByPointer() {
        TestServer.post(PATH, json("volume", ", \"rolloverAt\": 5, \"timeZone\": \"Mars\"", "{\"at\": \"1/2/2026\", \"value\": 1},"
                + "{\"at\": \"2026-02-30\", \"value\": -1}")).statusCode(422)
                .body("errors.pointer", equalTo(List.of("/meter/rolloverAt", "/meter/timeZone", "/readings/0/at",
                        "/readings/1/at", "/readings/1/value")));
        TestServer.post(PATH, json("register", ", \"intervalMinutes\": 5", "{\"at\": \"2026-01-01\", \"value\": 1}"))
                .statusCode(422).body("errors.pointer", equalTo(List.of("/meter/intervalMinutes")));
        TestServer.post(PATH, json("register", "", "{\"at\": \"2026-01-01\", \"value\": 1}")).statusCode(422)
                .body("errors", hasSize(1)).body("errors[0].code", equalTo("impossible"))
                .body("errors[0].message", containsString("No whole day."));
        TestServer.post(PATH, json("volume", "", "{\"at\": \"2001-01-01\", \"value\": 1}, {\"at\": \"2026-01-01\", \"value\": 1},"
                + "{\"at\": \"2026-01-02\", \"value\": 1}")).statusCode(422)
                .body("errors[0].message", containsString("At most 1,096 are allowed")).body("errors[0].message", containsString("span"));
    }
}
