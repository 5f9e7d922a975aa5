// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was released under {@code /v1} stays; and the comparison that says so finds what would not. */
class ReleasedContractTest {

    private static final JsonNode NOW = Breaks.read(Committed.CONTRACT.resolve("openapi.yaml"));
    private static final Breaks BREAKS = new Breaks(NOW);

    @Test
    void breaksNothingThatWasReleased() {
        Path released = Committed.CONTRACT.resolve("released.yaml");
        assumeTrue(Files.exists(released), "no contract was released yet");
        assertEquals(List.of(), new Breaks(Breaks.read(released)).in(NOW));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a path is gone                     | drop  | /paths/~1v1~1assessment                                   |
            a method is gone                   | drop  | /paths/~1v1~1hardness-conversion/get                      |
            an operation is renamed            | put   | /paths/~1v1~1assessment/post/operationId                  | "judge"
            an error is gone                   | drop  | /paths/~1v1~1assessment/post/responses/422                |
            a form of an answer is gone        | drop  | /paths/~1v1~1regeneration-schedule/post/responses/200/content/text~1csv |
            a form of a request is gone        | drop  | /paths/~1v1~1meter-readings/post/requestBody/content/text~1csv |
            a parameter is required            | put   | /paths/~1v1~1compensated-hardness/get/parameters/3/required | true
            a parameter has another type       | put   | /paths/~1v1~1compensated-hardness/get/parameters/3/schema/type | "string"
            an answer's property is gone       | drop  | /components/schemas/FitAnswer/properties/fits             |
            an answer's property may be absent | cross | /components/schemas/FitAnswer/required                    | "fits"
            an answer's type is another        | put   | /components/schemas/FitAnswer/properties/fits/type        | "string"
            an answer's property may be null   | put   | /components/schemas/FitAnswer/properties/fits/type        | ["boolean", "null"]
            an answer's part is another        | put   | /components/schemas/FitAnswer/properties/capacity/$ref    | "#/components/schemas/HardnessQuantity"
            an answer's value is gone          | cross | /components/schemas/CautionAnswer/properties/severity/enum | "stop"
            an answer's values are open        | drop  | /components/schemas/CautionAnswer/properties/severity/enum |
            an answer's list has other items   | put   | /components/schemas/HardnessConversionAnswer/properties/cautions/items/$ref | "#/components/schemas/BasisAnswer"
            a request's property is gone       | drop  | /components/schemas/WaterRequest/properties/ph            |
            a request's property is required   | add   | /components/schemas/CompensatedHardnessRequest/required   | "units"
            a request's type is another        | put   | /components/schemas/WaterRequest/properties/ph/type       | "string"
            a request's number must be whole   | put   | /components/schemas/WaterRequest/properties/ph/type       | "integer"
            a request's value is gone          | cross | /components/schemas/WaterRequest/properties/ironForm/enum | "dissolved"
            a request's unit is gone           | cross | /components/schemas/HardnessQuantity/properties/unit/enum | "dH"
            a request's values are listed      | put   | /components/schemas/WaterRequest/properties/ph/enum       | [7]
            a request's value is fixed         | put   | /components/schemas/WaterRequest/properties/ph/const      | 7
            a request's least is more          | put   | /components/schemas/WaterRequest/properties/ph/minimum    | 1
            a request's least is refused       | put   | /components/schemas/WaterRequest/properties/ph/exclusiveMinimum | 0
            a request's most is less           | put   | /components/schemas/WaterRequest/properties/ph/maximum    | 13
            a request's number has a most now  | put   | /components/schemas/HardnessQuantity/properties/value/maximum | 100
            a request's list is shorter        | put   | /components/schemas/HouseholdRequest/properties/fixtures/maxItems | 2
            a request's text is shorter        | put   | /components/schemas/MeteredAlternativeRequest/properties/name/maxLength | 2
            a request's text has a pattern     | put   | /components/schemas/MeteredAlternativeRequest/properties/name/pattern | "^a"
            a request's items are others       | put   | /components/schemas/PeakFlowRequest/properties/fixtures/items/$ref | "#/components/schemas/TariffBlock"
            """)
    void findsWhatBreaks(String what, String change, String pointer, String value) {
        assertFalse(BREAKS.in(changed(change, pointer, value)).isEmpty(), what);
    }

    /** Whoever meets a break is to see where it is. */
    @Test
    void reportsWhereItBreaks() {
        List<String> breaks = BREAKS.in(changed("put", "/components/schemas/WaterRequest/properties/ph/maximum", "13"));
        assertTrue(breaks.contains("POST /v1/compensated-hardness/water/ph: ChangedNumericRange"), breaks.toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            nothing is changed                 | put   | /openapi                                                  | "3.1.0"
            a path is new                      | put   | /paths/~1v1~1new                                          | {"get": {"operationId": "new", "responses": {"200": {"description": "New."}}}}
            a request's property is new        | put   | /components/schemas/WaterRequest/properties/clarity       | {"type": "number"}
            a request's value is new           | add   | /components/schemas/WaterRequest/properties/ironForm/enum | "heme"
            a request's range is wider         | put   | /components/schemas/WaterRequest/properties/ph/maximum    | 15
            a request's range is open          | drop  | /components/schemas/WaterRequest/properties/ph/maximum    |
            a request's list may be longer     | put   | /components/schemas/HouseholdRequest/properties/fixtures/maxItems | 1000
            an answer's property is new        | put   | /components/schemas/FitAnswer/properties/clarity          | {"type": "number"}
            an answer's value is new           | add   | /components/schemas/CautionAnswer/properties/code/enum    | "newCaution"
            a unit is new                      | add   | /components/schemas/HardnessQuantity/properties/unit/enum | "ppm"
            a form of an answer is new         | put   | /paths/~1v1~1assessment/post/responses/200/content/text~1csv | {"schema": {"type": "string"}}
            words are others                   | put   | /components/schemas/WaterRequest/properties/ph/description | "How sour it is."
            """)
    void letsItGrow(String what, String change, String pointer, String value) {
        assertEquals(List.of(), BREAKS.in(changed(change, pointer, value)), what);
    }

    /** The contract with one change: a property put or dropped, an element added to a list or crossed out of it. */
    private static JsonNode changed(String change, String pointer, String value) {
        JsonNode contract = NOW.deepCopy();
        JsonPointer place = JsonPointer.compile(pointer);
        JsonNode json = value == null ? null : Committed.tree(value.getBytes(StandardCharsets.UTF_8));
        String name = place.last().getMatchingProperty();
        switch (change) {
            case "put" -> ((ObjectNode) contract.at(place.head())).set(name, json);
            case "drop" -> assertNotNull(((ObjectNode) contract.at(place.head())).remove(name), pointer);
            case "add" -> ((ArrayNode) contract.at(place)).add(json);
            case "cross" -> {
                ArrayNode list = (ArrayNode) contract.at(place);
                list.remove(IntStream.range(0, list.size()).filter(i -> list.get(i).equals(json)).findFirst().orElseThrow());
            }
            default -> throw new IllegalArgumentException(change);
        }
        return contract;
    }
}
