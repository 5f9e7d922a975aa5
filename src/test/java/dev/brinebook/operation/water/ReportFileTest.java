// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A report as text/csv (RFC 4180): the answer of the same report in JSON, and errors by line and column. */
class ReportFileTest {

    private static final String PATH = "/v1/water-report";

    @Test
    void theExampleOfTheContractIsAnswered() {
        TestServer.postCsv(PATH + "?supply=privateWell&units=metric", ReadWaterReport.OPERATION.textForm().example()).statusCode(200)
                .body("results.parameter", equalTo(List.of("hardness", "nitrate", "iron")))
                .body("results[2].limit", equalTo(0.05));
    }

    /** Columns in another order, quoted cells, blanks, a blank line, every property of a result, every setting. */
    @Test
    void theAnswerIsThatOfTheSameReportInJson() {
        String csv = String.join("\r\n",
                "value, parameter ,unit,form,qualifier,method,uncertainty,resolution,tap,onSite,firstDraw,"
                        + "report,sampledOn,hoursHeld",
                "18.5,hardness,gpg,,,drops,,1,raw,TRUE,false,1,2026-03-01,", "",
                "\"5.20\", nitrate ,mg/L,asNitrogen,estimated,laboratory,0.4,,,,,2,2026-04-01,26.5",
                "0.05,iron,,,below,,,,unknown,,true,,,", ",eColi,,,absent,,,,,,,,,31", "-1e0,copper,ug/L,,,,,,,,,,,");
        String json = """
                {"results": [
                 {"parameter": "hardness", "value": 18.5, "unit": "gpg", "method": "drops", "resolution": 1, "tap": "raw", "onSite": true,
                  "firstDraw": false, "report": 1, "sampledOn": "2026-03-01"},
                 {"parameter": "nitrate", "value": 5.20, "unit": "mg/L", "form": "asNitrogen", "qualifier": "estimated",
                  "method": "laboratory", "uncertainty": 0.4, "report": 2, "sampledOn": "2026-04-01", "hoursHeld": 26.5},
                 {"parameter": "iron", "value": 0.05, "qualifier": "below", "tap": "unknown", "firstDraw": true},
                 {"parameter": "eColi", "qualifier": "absent", "hoursHeld": 31},
                 {"parameter": "copper", "value": -1e0, "unit": "ug/L"}],
                 "supply": "privateWell", "appearance": {"atTap": "clear", "afterStanding": "redGrains"},
                 "naturalSodium": {"value": 12, "unit": "mg/L"}, "country": "germany", "units": "metric"}""";
        assertEquals(TestServer.post(PATH, json).statusCode(200).extract().asString(),
                TestServer.postCsv(PATH + "?supply=privateWell&atTap=clear&afterStanding=redGrains&naturalSodium=12&country=germany"
                        + "&units=metric", csv).statusCode(200).extract().asString());
    }

    /** As a spreadsheet of Germany or France writes it: semicolons, decimal commas, units as they are printed. */
    @Test
    void readsSemicolonsAndDecimalCommas() {
        String comma = "parameter,value,unit,method\r\nhardness,17.2,dH,\r\niron,120,ug/L,laboratory\r\nconductivity,640,uS/cm,meter\r\n";
        String semicolon = "parameter;value;unit;method\r\nhardness;17,2;\u00B0dH;\r\niron;120;\u00B5g/l;laboratory\r\n"
                + "conductivity;640;\u03BCS/cm;meter\r\n";
        assertEquals(TestServer.postCsv(PATH, comma).statusCode(200).extract().asString(),
                TestServer.postCsv(PATH, semicolon).statusCode(200).extract().asString());
        TestServer.postCsv(PATH, "parameter;value\r\nhardness;1.234,5\r\n").statusCode(422)
                .body("errors[0].pointer", equalTo("/results/0/value"));
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(delimiter = '|', value = {
        "parameter,value~hardness,many                    | /results/0/value     | wrongType    | Line 2, column `value`. Must be a number",
        "parameter,value~hardness,'18,5'                  | /results/0           | wrongCount   | Line 2. ",
        "parameter,value~~hardness,\"18,5\"              | /results/0/value     | wrongType    | Line 3, column `value`. Must be a number",
        "parameter,value~iron,<0.05                       | /results/0/value     | wrongType    | Line 2, column `value`. Must be a number",
        "parameter,value~hardness,5~hardnes,5             | /results/1/parameter | unknownValue | Line 3, column `parameter`. Must be one",
        "parameter,value~,5                               | /results/0/parameter | missing      | Line 2, column `parameter`. Missing",
        "parameter,value~hardness,                        | /results/0/value     | missing      | Line 2, column `value`. Missing `value`",
        "parameter,value~hardness,2e6                     | /results/0/value     | outOfRange   | Line 2, column `value`. Must be",
        "parameter,value,unit~hardness,5,NTU              | /results/0/unit      | inconsistent | Line 2, column `unit`. `hardness` is not",
        "parameter,value,onSite~ph,7,yes                  | /results/0/onSite    | wrongType    | Line 2, column `onSite`. Must be `true`",
        "parameter,value,report~ph,7,1.5                  | /results/0/report    | wrongType    | Line 2, column `report`. Must be a whole",
        "parameter,value,report~ph,7,0                    | /results/0/report    | outOfRange   | Line 2, column `report`. Must be",
        "parameter,value,sampledOn~ph,7,1.3.26            | /results/0/sampledOn | wrongType    | Line 2, column `sampledOn`. Must be a",
        "parameter,vale~hardness,5                        | ''                   | unknownField | Line 1, column `vale`. Unknown field",
        "parameter,value,value~hardness,5,5               | ''                   | inconsistent | Line 1, column `value`. Duplicate",
        "value,unit~5,gpg                                 | ''                   | missing      | Line 1 must be a header",
        "''                                               | ''                   | missing      | Line 1 must be a header",
        "'parameter,value~\"hardness,5'                  | ''                   | wrongType    | A quote is not closed",
        "parameter,value                                  | /results             | wrongCount   | Must"})
    void anErrorNamesLineAndColumn(String text, String pointer, String code, String message) {
        TestServer.postCsv(PATH, text.replace("~", "\r\n")).statusCode(422).body("errors", hasSize(1))
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo(code))
                .body("errors[0].message", startsWith(message));
    }

    /** As many errors as any request reports, each with its line; a table that is too long is refused whole. */
    @Test
    void aTableMayHaveAsManyRowsAsAReportHasResults() {
        String row = "\nhardness,many";
        TestServer.postCsv(PATH, "parameter,value" + String.join("", Collections.nCopies(150, row))).statusCode(422)
                .body("detail", startsWith("The request has at least 100 errors."))
                .body("errors[0].message", startsWith("Line 2, column `value`."));
        String good = "\nhardness,18.5";
        TestServer.postCsv(PATH, "parameter,value" + String.join("", Collections.nCopies(WaterReportRequest.MAX_RESULTS, good)))
                .statusCode(200);
        TestServer.postCsv(PATH, "parameter,value" + String.join("", Collections.nCopies(100_000 / good.length(), good)))
                .statusCode(422).body("errors", hasSize(1)).body("errors[0].pointer", equalTo("/results"))
                .body("errors[0].code", equalTo("wrongCount"));
    }
}
