// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.brinebook.Main;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The arguments that pass are those that pass another validator of JSON Schema 2020-12. */
class SchemaCheckTest {

    private static final SchemaRegistry VALIDATORS = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{\"people\":4}", "{\"people\":4.0}", "{\"people\":4.5}", "{\"people\":0}", "{\"people\":16}",
        "{\"people\":\"4\"}", "{\"people\":null}", "{\"hardness\":0}", "{\"hardness\":-0.1}", "{\"size\":0}", "{\"size\":0.001}",
        "{\"hardnessUnit\":\"gpg\"}", "{\"hardnessUnit\":\"GPG\"}", "{\"hardnessUnit\":5}", "{\"currency\":\"USD\"}",
        "{\"currency\":\"usd\"}", "{\"currency\":\"USDX\"}", "{\"unknown\":[]}", "{\"unknown\":[\"supply\"]}",
        "{\"unknown\":[\"people\"]}", "{\"unknown\":\"supply\"}", "{\"confirmed\":[\"hardnessUnit\",\"sizeUnit\",\"sizeUnit\"]}",
        "{\"nothing\":1}", "{\"operation\":\"assess\",\"arguments\":{}}", "{\"operation\":\"assess\",\"arguments\":[]}",
        "{\"operation\":\"x\",\"arguments\":{}}", "{\"operation\":\"assess\"}", "{\"question\":\"ab\"}", "{\"question\":\"abc\"}",
        "{\"operation\":\"assess\",\"arguments\":{},\"show\":[\"/a\",\"b\"]}", "{\"operation\":\"assess\",\"arguments\":{},\"detail\":"
                + "\"\"}"})
    void judgesAsAnotherValidatorDoes(String arguments) {
        Map<String, Object> list = new Tools(Main.OPERATIONS).list();
        for (JsonNode tool : Json.tree(Json.bytes(list)).get("tools")) {
            JsonNode schema = tool.get("inputSchema");
            boolean valid = VALIDATORS.getSchema(schema.toString(), InputFormat.JSON).validate(arguments, InputFormat.JSON).isEmpty();
            boolean passed = SchemaCheck.check(schema, QuickFacts.members(Json.tree(arguments.getBytes(StandardCharsets.UTF_8)))).isEmpty();
            assertEquals(valid, passed, tool.get("name") + " " + arguments);
        }
    }
}
