// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.Main;
import dev.brinebook.agent.AgentServer;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page for language models, in the order that llmstxt.org proposes: title, quote, text, sections of links. */
class LlmsTextTest {

    private static final Pattern LINK = Pattern.compile("\\[[^]]+]\\(([^)]+)\\)");

    private final String text = Served.given().get("/llms.txt").then().statusCode(200)
            .contentType("text/plain; charset=utf-8").extract().asString();

    @Test
    void hasTheOrderOfItsKind() {
        List<String> lines = text.lines().toList();
        assertEquals("# Brinebook", lines.get(0));
        assertTrue(lines.get(2).startsWith("> "), lines.get(2));
        List<String> sections = lines.stream().filter(line -> line.startsWith("## ")).toList();
        assertEquals(List.of("## Agents", "## Operations", "## Many cases", "## Contract", "## Optional"), sections);
        String links = text.substring(text.indexOf("\n## "));
        assertTrue(links.lines().allMatch(line -> line.isBlank() || line.startsWith("## ") || line.startsWith("- [")
                || line.startsWith("  ")), links);
    }

    @Test
    void namesEveryOperationWithItsPathAndWhatItDoes() {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            assertTrue(text.contains(": POST `" + operation.path() + "`. " + operation.summary() + "."), operation.id());
            assertTrue(text.contains("- [" + operation.id() + "]("), operation.id());
        }
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        JsonNode contract = new ObjectMapper().readTree(Served.given().get("/openapi.json").asByteArray());
        List<String> broken = new ArrayList<>();
        List<String> links = LINK.matcher(text).results().map(link -> link.group(1)).toList();
        for (String link : links) {
            String[] parts = link.split("#", 2);
            int status = Served.given().get(parts[0]).statusCode();
            boolean found = status == 200 || parts[0].equals(AgentServer.PATH) && status == 405;
            boolean inside = parts.length == 1
                    || !contract.at(URLDecoder.decode(parts[1], StandardCharsets.UTF_8)).isMissingNode();
            if (!found || !inside) {
                broken.add(link);
            }
        }
        assertFalse(links.size() < 35, "it saw some");
        assertEquals(List.of(), broken);
    }
}
