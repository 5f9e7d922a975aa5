// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings are told as they are set: the same figures in each sentence, and no reserve of a meter that needs none. */
class SettingsInWordsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Source of each: common practice, a controller is set to what is told, and a twin keeps nothing back. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # people | gpg | softener                                                                         | where | words
            2 | 18 | "salt":"potassiumChloride","saltPerRegeneration":{"value":12,"unit":"lb"},"control":{"kind":"meteredDelayed"} \
            | /summary | 7.65 lb of salt per regeneration, with 290 gal in reserve
            2 | 18 | "salt":"potassiumChloride","saltPerRegeneration":{"value":12,"unit":"lb"},"control":{"kind":"meteredDelayed"} \
            | /verdict/action | 290 gal of it in reserve, with 7.65 lb of salt
            6 | 25 | "saltDose":{"value":8,"unit":"lb/ft3"},"control":{"kind":"twinAlternating"} \
            | /summary | of salt per regeneration.
            6 | 25 | "saltDose":{"value":8,"unit":"lb/ft3"},"control":{"kind":"twinAlternating"} \
            | /settings/reasons/3/reason | No reserve is needed.
            8 | 41 | "saltDose":{"value":8,"unit":"lb/ft3"},"control":{"kind":"meteredDelayed"} \
            | /verdict/ladder/3/settings | 731.7 gal between regenerations, 731.7 gal of it in reserve
            """)
    void areToldAsTheyAreSet(int people, int hardness, String softener, String where, String words) throws JsonProcessingException {
        String text = answer(people, hardness, softener).at(where).asText().replace('\u00a0', ' ');
        assertEquals(words, text.contains(words) ? words : text);
    }

    private static JsonNode answer(int people, int hardness, String softener) throws JsonProcessingException {
        String body = "{\"water\":{\"hardness\":{\"value\":" + hardness + ",\"unit\":\"gpg\"}},\"household\":{\"people\":" + people
                + "},\"softener\":{\"resinVolume\":{\"value\":1,\"unit\":\"ft3\"}," + softener + "}}";
        AssessmentRequest request = new JsonReader().read(body.getBytes(StandardCharsets.UTF_8), AssessmentRequest.class);
        return JSON.readTree(new String(new JsonWriter().write(Assess.OPERATION.answer(request)), StandardCharsets.UTF_8));
    }

    /** Source: common practice, the working table; 24,000 grains are 80 % of the nameplate too. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # lb/ft3, finding
            8,  moreSaltThanNeeded
            15, nameplateRule
            """)
    void aCapacityOfTheTableIsNoRuleOfThumb(int dose, String finding) throws JsonProcessingException {
        JsonNode answer = answer(6, 25, "\"saltDose\":{\"value\":" + dose + ",\"unit\":\"lb/ft3\"},"
                + "\"control\":{\"kind\":\"twinAlternating\",\"hardnessSetting\":{\"value\":25,\"unit\":\"gpg\"},"
                + "\"capacitySetting\":{\"value\":24000,\"unit\":\"gr\"}}");
        assertEquals(finding, answer.at("/findings/0/code").asText());
    }
}
