// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The README says what the service does. */
class ReadmeTest {

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }

    @Test
    void showsAPartOfTheRealAnswer() throws IOException {
        ObjectMapper json = new ObjectMapper();
        Matcher shown = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(readme());
        assertTrue(shown.find());
        JsonNode answer = json.readTree(Path.of("openapi", "examples", "assess.well-family.response.json").toFile());
        assertPart(json.readTree(shown.group(1)), answer, "");
    }

    private static void assertPart(JsonNode part, JsonNode whole, String pointer) {
        if (part.isObject()) {
            part.properties().forEach(entry -> assertPart(entry.getValue(), whole.path(entry.getKey()),
                    pointer + "/" + entry.getKey()));
        } else if (part.isArray()) {
            for (int i = 0; i < part.size(); i++) {
                assertPart(part.get(i), whole.path(i), pointer + "/" + i);
            }
        } else {
            assertEquals(whole, part, pointer);
        }
    }

    @Test
    void listsEveryOperation() throws IOException {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            String methods = operation.query().isEmpty() ? "POST" : "POST, GET";
            assertTrue(readme().contains("| " + operation.id() + " | " + methods + " `" + operation.path() + "` |"),
                    operation.id());
        }
    }

    @Test
    void listsEverySettingWithItsDefault() throws IOException {
        List<String> rows = Settings.help().lines().filter(line -> line.startsWith("  ")).toList();
        assertTrue(rows.size() > 5);
        for (String row : rows) {
            Matcher setting = Pattern.compile("  (\\w+) +.*\\(default ([^,)]+).*").matcher(row);
            assertTrue(setting.matches(), row);
            assertTrue(readme().contains("| `" + setting.group(1) + "` | " + setting.group(2) + " |"), row);
        }
    }
}
