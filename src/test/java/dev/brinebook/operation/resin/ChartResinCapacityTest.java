// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartResinCapacityTest {

    private static ValidatableResponse chart(double hardnessMgPerL, double sodiumMgPerL, String more) {
        return TestServer.post("/v1/resin-capacity?detail=full", """
                {"water": {"hardness": {"value": %s, "unit": "mg/L"}, "iron": {"value": 0, "unit": "mg/L"},
                 "sodium": {"value": %s, "unit": "mg/L"}}%s}""".formatted(hardnessMgPerL, sodiumMgPerL, more));
    }

    private static String doses(String... poundsPerCubicFoot) {
        return ", \"saltDoses\": [" + String.join(", ", List.of(poundsPerCubicFoot).stream().map(
                pounds -> "{\"value\": " + pounds + ", \"unit\": \"lb/ft3\"}").toList()) + "]";
    }

    /** Common practice; 22.99 mg/L of sodium are 1 meq/L, and calcium to magnesium is 2:1 where nothing else is given. */
    @ParameterizedTest
    @CsvSource({"6, 20", "8, 24", "10, 27", "15, 30"})
    void columnGivesTheWorkingTableInItsWater(String pounds, double kilograins) {
        chart(300, 22.99, doses(pounds)).statusCode(200)
                .body("points[0].workingTable.capacity.value", near(kilograins, 1e-4, "common practice"))
                .body("points[0].workingTable.capacity.unit", equalTo("kgr/ft3"))
                .body("points[0].workingTable.kind", equalTo("commonPractice"))
                .body("points[0].column.capacity.value", near(kilograins, 0.03 * kilograins, "one efficiency, 0.79"))
                .body("column.resinEfficiency", equalTo(0.79));
    }

    /** Generic resin data sheet, 500 mg/L, Ca:Mg 2:1. */
    @ParameterizedTest
    @CsvSource({"5, 20.0", "7.5, 25.4", "10, 29.0", "15, 33.0"})
    void columnGivesTheNewResinTableInItsWater(String pounds, double kilograins) {
        chart(500, 22.99, doses(pounds) + ", \"preferences\": {\"capacityTable\": \"newResin\"}").statusCode(200)
                .body("points[0].newResinTable.capacity.value", near(kilograins, 1e-4, "resin data sheet"))
                .body("points[0].column.capacity.value", near(kilograins, 0.02 * kilograins, "one efficiency, 0.90"))
                .body("column.resinEfficiency", equalTo(0.9));
    }

    /** CIAAW: 5,994 gr/lb of sodium chloride; 2.0 eq/L of sites are 43.737 kgr/ft³. */
    @Test
    void nothingExceedsSaltAndSites() {
        JsonPath answer = chart(300, 22.99, "").statusCode(200).body("points", org.hamcrest.Matchers.hasSize(18))
                .body("points[3].saltDose.value", equalTo(6))
                .body("points[3].stoichiometricCapacity.value", near(6 * 5.994, 0.005, "CIAAW"))
                .body("points[17].stoichiometricCapacity.value", near(43.737, 0.001, "CIAAW"))
                .body("totalCapacity.value", near(43.737, 0.001, "CIAAW"))
                .body("points.column.findAll { it.capacity != null }.saltUsedPercent", everyItem(notNullValue()))
                .extract().jsonPath();
        for (int i = 0; i < 18; i++) {
            double ceiling = answer.getDouble("points[" + i + "].stoichiometricCapacity.value");
            for (String model : List.of("workingTable", "newResinTable", "column")) {
                Number capacity = answer.get("points[" + i + "]." + model + ".capacity.value");
                assertTrue(capacity == null ? model.equals("column") : capacity.doubleValue() < ceiling, model + " " + i);
            }
        }
        // 24 kgr from 8 lb: 3,000 of 5,994 gr/lb.
        double column = answer.getDouble("points[5].column.saltEfficiency.value");
        assertTrue(Math.abs(answer.getDouble("points[5].column.saltUsedPercent") - column / 59.94) < 0.01);
    }

    /** Independent stage model: at 20 meq/L of sodium 6 lb/ft³ cannot hold 17.1 mg/L, 8 lb/ft³ can. */
    @Test
    void marksTheDosesThatASaltyWaterMakesUseless() {
        chart(300, 459.8, doses("4", "6", "8", "10")).statusCode(200)
                .body("points[0].column.reason", equalTo("endPointNotHeld"))
                .body("points[1].column.reason", equalTo("endPointNotHeld"))
                .body("points[1].column.why", startsWith("At this salt dose, hardness leakage is above the end point"))
                .body("points[1].column.capacity", nullValue()).body("points[1].column.linesReached", nullValue())
                .body("points[1].workingTable.capacity.value", near(20, 1e-4, "the table knows no sodium"))
                .body("points[2].column.reason", nullValue())
                .body("points[2].column.endLeakage.value", near(1, 0.001, "1 gpg is the end point"))
                .body("points[3].column.capacity.value", near(27.33 * 0.79, 0.1, "plug-flow shift program of our own in C, whose brine"
                        + " ends after a whole shift"))
                .body("column.leastSaltDose.saltDose.value", near(7, 1, "between 6 and 8 lb/ft3"))
                .body("efficiencyLines.find { it.line == 'california2002' }.column.reason", equalTo("efficiencyNotReached"))
                .body("summary", containsString("from a dose of 8\u00a0lb/ft³ up. Below "));
    }

    /** 4,000 gr/lb are 20.0 kgr/ft³ from 5 lb (resin data sheet); 3,350 lie between 4,000 at 5 and 3,333 at 6. */
    @Test
    void statesTheHighestDoseThatMeetsALine() {
        chart(300, 22.99, doses("5", "6", "10")).statusCode(200)
                .body("efficiencyLines.line", contains("california2002", "california2000", "californiaClock",
                        "productStandard", "sewerDistrict"))
                .body("efficiencyLines[0].newResinTable.saltDose.value", near(5, 0.001, "20,000 / 5"))
                .body("efficiencyLines[1].newResinTable.saltDose.value", near(7.6, 0.1, "25,400 / 7.5 is 3,387"))
                .body("efficiencyLines[1].workingTable.saltDose.value", near(5.9, 0.1, "20,000 / 6 is 3,333"))
                .body("efficiencyLines[2].workingTable.saltDose.value", near(8.9, 0.6, "3,000 at 8 and 2,700 at 10"))
                .body("efficiencyLines[1].column.saltDose.value", near(6, 0.4, "the column is the table here"))
                .body("points[0].newResinTable.linesReached", hasItems("california2002", "sewerDistrict"))
                .body("points[1].workingTable.linesReached", contains("californiaClock"))
                .body("points[2].workingTable.linesReached", equalTo(List.of()))
                .body("cautions.code", hasItem("efficiencyNotCertified"))
                .body("basis.formula", hasItem(containsString("not a certification")));
    }

    /** As many equivalents are 74.548 / 58.440 of the mass (CIAAW). */
    @Test
    void countsPotassiumChlorideByItsEquivalents() {
        JsonPath sodium = chart(300, 22.99, "").extract().jsonPath();
        JsonPath potassium = chart(300, 22.99, ", \"salt\": \"potassiumChloride\"").statusCode(200)
                .body("points[0].saltDose.value", near(3 * 74.548 / 58.440, 1e-4, "CIAAW"))
                .body("points[17].stoichiometricCapacity.value", near(43.737, 0.001, "the sites are the same"))
                .body("points[17].workingTable.capacity.value", near(32.8125, 1e-3, "30 * 35/32, WQP 2009"))
                .body("cautions.code", hasItem("potassiumKidneyHeart")).body("assumptions.name", hasItem("potassiumChloride"))
                .body("assumptions.find { it.pointer == '/saltDoses' }.code", startsWith("3.82"))
                .body("assumptions.find { it.pointer == '/saltDoses' }.note",
                        equalTo("the equivalents of the usual doses of sodium chloride"))
                .extract().jsonPath();
        int compared = 0;
        for (int i = 0; i < 18; i++) {
            String table = "points[" + i + "].workingTable.capacity.value";
            assertTrue(Math.abs(sodium.getDouble(table) - potassium.getDouble(table)) < 1e-4, table);
            String column = "points[" + i + "].column.capacity.value";
            if (sodium.get(column) != null && potassium.get(column) != null) {
                double ratio = potassium.getDouble(column) / sodium.getDouble(column);
                assertTrue(ratio > 1.02 && ratio < 1.12, ratio + " is the ratio by the assumption");
                compared++;
            }
        }
        assertTrue(compared > 10);
    }

    /** Common practice: 24 kgr/ft3 at 8 lb/ft3; three quarters of the sites with the salt of 6 lb/ft3 have 8 lb/ft3 each. */
    @Test
    void countsATestOfTheResinInTablesAndColumn() {
        String request = doses("6") + ", \"resin\": {\"test\": {%s}}";
        for (String test : List.of("\"percentOfNew\": 75", "\"totalCapacity\": {\"value\": 1.5, \"unit\": \"eq/L\"}")) {
            chart(300, 22.99, request.formatted(test)).statusCode(200)
                    .body("points[0].workingTable.capacity.value", near(0.75 * 24, 1e-4, "common practice"))
                    .body("points[0].workingTable.kind", equalTo("computed"))
                    .body("points[0].column.capacity.value", near(18, 0.05 * 18, "the same resin"))
                    .body("totalCapacity.value", near(1.5 * 21.87, 0.01, "WC&P 2011: 1 eq/L is 21.87 kgr/ft3"));
        }
        chart(300, 22.99, ", \"resin\": {\"totalCapacity\": {\"value\": 1, \"unit\": \"eq/L\"}, \"test\": {\"percentOfNew\": 15}}")
                .statusCode(422).body("errors.pointer", contains("/resin/test"));
    }

    /** Counter-current brine leaks far less at low doses (textbooks); ten years at 3 % leave 0.97^10 of the sites. */
    @Test
    void knowsResinAndDirectionInMetricUnits() {
        String request = ", \"saltDoses\": [{\"value\": 96, \"unit\": \"g/L\"}], \"units\": \"metric\", \"resin\": {%s}";
        double coCurrent = chart(300, 22.99, request.formatted("")).extract().jsonPath()
                .getDouble("points[0].column.meanLeakage.value");
        chart(300, 22.99, request.formatted("\"ageYears\": 10, \"stages\": 20") + ", \"brineDirection\": \"counterCurrent\"")
                .statusCode(200)
                .body("totalCapacity.value", near(2.0 * 50.043 * 0.7374, 0.01, "UFC 3-240-13FN, 3 % a year"))
                .body("totalCapacity.unit", equalTo("g/L"))
                .body("points[0].saltDose.value", equalTo(96))
                .body("points[0].column.startLeakage.unit", equalTo("mg/L"))
                .body("points[0].column.meanLeakage.value", lessThan(coCurrent / 2))
                .body("points[0].column.serviceBedVolumes", greaterThan(50.0))
                .body("water.calciumPercent", near(66.6667, 1e-4, "2:1"))
                .body("water.sodium.value", equalTo(22.99))
                .body("assumptions.find { it.pointer == '/resin/stages' }.value", equalTo(20))
                .body("assumptions.find { it.pointer == '/resin/stages' }.origin", equalTo("caller"))
                .body("assumptions.find { it.pointer == '/resin/totalCapacity' }.unit", equalTo("eq/L"))
                .body("assumptions.find { it.pointer == '/resin/totalCapacity' }.source", equalTo("WCP-2011"))
                .body("assumptions.find { it.pointer == '/resin/yearlyCapacityLossPercent' }.value", equalTo(3))
                .body("assumptions.find { it.pointer == '/saltDoses' }.code", equalTo("96 g/L"))
                .body("assumptions.find { it.name == 'capacityMethods' }.code", equalTo("table, column"))
                .body("assumptions.name", hasItem("tables"));
        chart(300, 22.99, request.formatted("\"totalCapacity\": {\"value\": 1.9, \"unit\": \"eq/L\"}"))
                .body("totalCapacity.value", near(1.9 * 50.043, 0.001, "CIAAW"));
    }

    @Test
    void aWaterTooSoftForTheColumnStillHasTheTables() {
        chart(30, 22.99, doses("8")).statusCode(200)
                .body("column.reason", equalTo("nothingToSoften")).body("column.resinEfficiency", nullValue())
                .body("points[0].column", nullValue()).body("efficiencyLines[0].column", nullValue())
                .body("points[0].workingTable.capacity.value", near(24, 1e-4, "common practice"))
                .body("basis.pointer", not(hasItem(startsWith("/points/*/column"))))
                .body("summary", startsWith("At a salt dose of 8\u00a0lb/ft³, the working table gives a capacity of 24"
                        + "\u00a0thousand grains/ft³. The equilibrium column gives no capacity."));
        chart(30, 22.99, doses("8") + ", \"preferences\": {\"endPoint\": {\"value\": 5, \"unit\": \"mg/L\"}}")
                .body("column.reason", nullValue()).body("points[0].column.endLeakage.value", near(5 / 17.118, 1e-4, ""));
        chart(0, 0, doses("8")).statusCode(200).body("water.calciumPercent", nullValue());
        chart(300, 9_999, doses("3")).statusCode(200).body("column.leastSaltDose.reason", equalTo("noDoseHoldsEndPoint"))
                .body("summary", containsString("In this water none of these doses is useful. No dose keeps"));
    }

    @Test
    void reportsEveryFault() {
        chart(300, 22.99, doses("8", "2", "21")).statusCode(422).body("errors.pointer", hasItem(startsWith("/saltDoses/1")));
        chart(300, 22.99, doses("8", "21")).statusCode(422).body("errors.pointer", contains("/saltDoses/1"))
                .body("errors[0].message", equalTo("Must be from 3 to 20\u00a0lb/ft³ with this salt. Given: 21\u00a0lb/ft³."));
        chart(300, 22.99, doses("3.5") + ", \"salt\": \"potassiumChloride\"").statusCode(422)
                .body("errors.pointer", contains("/saltDoses/0"));
        chart(300, 22.99, ", \"saltDoses\": []").statusCode(422).body("errors.pointer", contains("/saltDoses"));
        chart(300, 22.99, ", \"saltDoses\": [null, {\"value\": 8}]").statusCode(422);
        chart(300, 22.99, ", \"resin\": {\"stages\": 41, \"ageYears\": 26, \"totalCapacity\": {\"value\": 0.7, \"unit\":"
                + " \"eq/L\"}}").statusCode(422).body("errors.pointer", contains("/resin/ageYears", "/resin/stages",
                        "/resin/totalCapacity/value"));
        TestServer.post("/v1/resin-capacity?detail=full", "{}").statusCode(422).body("errors.pointer", contains("/water"));
    }
}
