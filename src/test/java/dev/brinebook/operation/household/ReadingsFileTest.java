// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings as text/csv (RFC 4180): rows that cannot be read, files that are none, and settings in the query. */
class ReadingsFileTest {

    private static final String PATH = "/v1/meter-readings?unit=L&units=metric";

    @Test
    void theExampleOfTheContractIsAnswered() {
        TestServer.postCsv("/v1/meter-readings?unit=gal&timeZone=America/Chicago&people=4",
                ReadMeter.OPERATION.textForm().example()).statusCode(200)
                .body("days.values", equalTo(List.of(311.5, 268.2))).body("coverage.rows", equalTo(List.of()));
    }

    @Test
    void rowsThatCannotBeReadAreReportedByLine() {
        String csv = String.join("\r\n", "at,reading", "2026-01-01,100", "01.01.2026,110", "", "\"2026-01-02\",\"200.5\"",
                "2026-01-02T06:00,210,5", "2026-01-02T07:00,\"211,5\"", "2026-01-02T08:00,-1", "2026-01-02T09:00,many",
                "2026-01-02T10:00,", "2026-01-02T11:00", "\"2026-01-02", "T12:00\",240", "2026-01-02T13:00,2e12",
                " 2026-01-03 , 300 ", "2026-01-03 10:00,400", "2026-13-01,1", "2026-01-02T10:00:00.5,1",
                "2026-01-02T14:00,1000000001", "2026-01-01T25:00,1", "1750-01-01,1", "2026-01-01T10:00+25:00,1");
        TestServer.postCsv(PATH, csv).statusCode(200)
                .body("days.values", equalTo(List.of(100.5, 99.5)))
                .body("coverage.readings", equalTo(19)).body("coverage.rowsSkipped", equalTo(16))
                .body("coverage.rows.collect { it.row + ' ' + it.code }", equalTo(List.of("3 unreadableTime", "6 wrongCells",
                        "7 decimalComma", "8 valueOutOfRange", "9 unreadableValue", "10 unreadableValue", "11 wrongCells",
                        "12 unreadableTime", "14 valueOutOfRange", "16 unreadableTime", "17 unreadableTime",
                        "18 unreadableTime", "19 valueOutOfRange", "20 unreadableTime", "21 unreadableTime",
                        "22 unreadableTime")));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', value = {
        "'' | The body is empty", "at;reading | separated by a comma", "at,reading,at | two columns",
        "at,at | each once", "at,reading,volume | two columns", "date,reading | at,reading", "AT,READING | at,reading",
        "2026-01-01,5 | header", "'at,reading~\"2026-01-01,5' | quote", "'at,reading~\"2026-01-01\"x,5' | quote",
        "'at,reading~' | No whole day."})
    void aFileThatIsNoTableIsRefused(String text, String told) {
        TestServer.postCsv(PATH, text.replace("~", "\r\n")).statusCode(422).body("errors[0].pointer", equalTo(""))
                .body("errors[0].message", containsString(told)).body("errors[0].parameter", nullValue());
    }

    @Test
    void rowsAreReportedWhereNoneCanBeUsed() {
        TestServer.postCsv(PATH, "at,volume\n2026-01-01,5;2\n2026-01-32,1\n").statusCode(422)
                .body("errors[0].message", containsString("Rows that can be read: 0 of 2."))
                .body("errors[1].message", containsString("Line 2: The value is not a plain decimal number."))
                .body("errors[2].message", containsString("Line 3: The time is not in ISO 8601 form"));
    }

    /** A table whose every cell is quoted, with a blank after a quote, and an empty cell and no line end at the end. */
    @Test
    void quotedCellsAreReadToTheEndOfTheFile() {
        TestServer.postCsv(PATH, "\"at\",\"volume\"\n\"2026-01-01\" ,\"5\"\n\"2026-01-02\",\"6\"\n\"2026-01-03\",\"\"")
                .statusCode(200).body("days.values", equalTo(List.of(5, 6)))
                .body("coverage.rows.collect { it.row + ' ' + it.code }", equalTo(List.of("4 unreadableValue")));
    }

    @Test
    void moreRowsThanAreTakenAreRefused() {
        TestServer.postCsv(PATH, "at,volume\n" + ",1\n".repeat(30_001)).statusCode(422)
                .body("errors[0].message", containsString("more than 30,000 rows"));
        TestServer.postCsv(PATH, "at,volume\n2026-01-01,5\n" + ",1\n".repeat(250)).statusCode(200)
                .body("coverage.rows.size()", equalTo(200)).body("coverage.rowsOmitted", equalTo(50));
    }

    @Test
    void aByteOrderMarkIsRefusedAsInJson() {
        TestServer.postCsv(PATH, "\uFEFFat,reading\n2026-01-01,5\n").statusCode(400)
                .body("type", equalTo("/problems/malformed-body")).body("detail", containsString("byte order mark"));
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource({"'', unit, missing, /meter/unit", "?unit=cup, unit, unknownValue, /meter/unit",
        "?unit=L&timezone=UTC, timezone, unknownField, /timezone", "?unit=L&timeZone=Berlin, timeZone, unknownValue, /meter/timeZone",
        "?unit=L&rolloverAt=1000, rolloverAt, inconsistent, /meter/rolloverAt",
        "?unit=L&people=2.5, people, wrongType, /people", "?unit=L&intervalMinutes=0, intervalMinutes, outOfRange,"
            + " /meter/intervalMinutes"})
    void faultsOfTheQueryAreReportedByParameter(String query, String parameter, String code, String pointer) {
        TestServer.postCsv("/v1/meter-readings" + query, "at,volume\n2026-01-01,5\n").statusCode(422)
                .body("errors[0].parameter", equalTo(parameter)).body("errors[0].code", equalTo(code))
                .body("errors[0].pointer", equalTo(pointer));
    }

    @Test
    void onlyThisOperationTakesIt() {
        TestServer.postCsv("/v1/softener-sizing", "at,volume\n").statusCode(415).header("Accept-Post", "application/json");
        TestServer.postText("/v1/meter-readings", "text/plain", "at,volume\n").statusCode(415)
                .header("Accept-Post", "application/json, text/csv").body("detail", containsString("or text/csv"));
        TestServer.postText("/v1/meter-readings", "text/csv; charset=iso-8859-1", "at,volume\n").statusCode(415);
    }

    /** Files of a month with every mischief at random: answered or refused, never a fault of ours. */
    @Test
    void noFileMakesItFail() {
        int answered = 0;
        for (long seed = 1; seed <= 160; seed++) {
            int status = TestServer.postCsv("/v1/meter-readings?unit=" + List.of("L", "m3", "gal", "ft3").get((int) (seed % 4))
                    + "&timeZone=" + List.of("Europe/Berlin", "Pacific/Apia", "Australia/Lord_Howe", "UTC")
                            .get((int) (seed / 4 % 4)), mischief(seed)).extract().statusCode();
            assertTrue(status == 200 || status == 422, "seed " + seed + " gives " + status);
            answered += status == 200 ? 1 : 0;
        }
        assertTrue(answered > 80, "answered " + answered);
        assertEquals(mischief(1), mischief(1));
    }

    private static String mischief(long seed) {
        Random random = new Random(seed);
        boolean register = random.nextBoolean();
        int minutes = List.of(15, 60, 720, 1440).get(random.nextInt(4));
        LocalDateTime at = random.nextInt(8) == 0 ? LocalDateTime.of(2011, 12, 15, 0, 0) : LocalDateTime.of(2026, 10, 10, 0, 0);
        double value = random.nextBoolean() ? 99_990 : 0;
        double dirt = random.nextInt(3) == 0 ? 0.3 : 0.01;
        StringBuilder csv = new StringBuilder(register ? "at,reading\n" : "at,volume\n");
        for (int i = 0; i < 30 * 1440 / minutes && i < 900; i++) {
            at = at.plusMinutes(minutes);
            value = register ? value + random.nextInt(3) * 0.01 * minutes : random.nextInt(5) * random.nextDouble();
            if (random.nextDouble() < dirt) {
                switch (random.nextInt(7)) {
                    case 0 -> value = random.nextInt(100_000);
                    case 1 -> at = at.minusMinutes(random.nextInt(10_000));
                    case 2 -> at = at.plusMinutes(random.nextInt(5_000));
                    case 3 -> csv.append(at).append(",x\n");
                    case 4 -> csv.append(at).append(',').append(value).append('\n');
                    case 5 -> value = value % 1_000;
                    default -> csv.append('\n');
                }
            }
            String written = random.nextInt(50) == 0 ? at + "+03:00" : at.toString();
            csv.append(written).append(',').append(java.math.BigDecimal.valueOf(value).toPlainString()).append('\n');
        }
        return csv.toString();
    }
}
