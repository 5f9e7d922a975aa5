// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

class PlanUpkeepTest {

    private static final String WELL = """
            {"water": {"hardness": {"value": 20, "unit": "gpg"}, "iron": {"value": 1, "unit": "mg/L"}, "supply": "privateWell"},
             "household": {"people": 4}, "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"}, "resinAgeYears": 5,
             "yearlyCapacityLossPercent": 3}, "preferences": {"startDate": "2026-03-02"}, "years": 2}""";

    /** 0.97^5 = 0.8587; ln(0.75/0.8587)/ln 0.97 = 4.44 years = 1622 days. Source: hand arithmetic. */
    @Test
    void datesTheReplacementOfTheResin() {
        post(WELL).statusCode(200).body("capacityLeftPercent", equalTo(85.8734))
                .body("tasks.find { it.item == 'resin' }.everyDays", equalTo(1622))
                .body("tasks.find { it.item == 'resin' }.dates", equalTo(List.of()))
                .body("tasks.find { it.item == 'bacteriaTest' }.dates", contains("2026-03-02", "2027-03-02", "2028-03-01"))
                .body("tasks.item", hasItems("resinCleaner", "injector", "seals")).body("tasks.item", not(hasItem("sedimentFilter")))
                .body("from", equalTo("2026-03-02")).body("to", equalTo("2028-03-01"));
        post(WELL.replace("\"years\": 2", "\"years\": 5")).body("tasks.find { it.item == 'resin' }.dates", contains("2030-08-10"));
    }

    /** Read by another's parser: as many events as dates, no two of one UID, all of one day. */
    @Test
    void isACalendarToo() throws IOException, ParserException {
        List<List<String>> dates = post(WELL).extract().jsonPath().getList("tasks.dates");
        String text = TestServer.post("/v1/upkeep-plan", WELL, "text/calendar").then().statusCode(200).extract().asString();
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        List<VEvent> events = calendar.getComponents("VEVENT");
        assertEquals(dates.stream().mapToInt(List::size).sum(), events.size());
        assertEquals(events.size(), events.stream().map(event -> event.getRequiredProperty(Property.UID).getValue()).distinct().count());
        assertTrue(events.stream().allMatch(event -> event.getRequiredProperty(Property.DTSTART).getValue().length() == 8));
    }

    private static ValidatableResponse post(String request) {
        return TestServer.post("/v1/upkeep-plan", request);
    }
}
