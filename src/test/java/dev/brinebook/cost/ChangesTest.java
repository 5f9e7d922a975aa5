// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the search changes at random stays small enough to be held. */
class ChangesTest {

    /** A part that stood at many places would, once changed, have grown at each. */
    @Test
    void noPartOfAChangedBodyStandsAtTwoPlaces() {
        for (int seed = 0; seed < 300; seed++) {
            Changes changes = new Changes(new Random(seed));
            JsonNode body = JsonNodeFactory.instance.objectNode().put("a", 1).put("b", "two");
            for (int i = 0; i < 4 && body.toString().length() < Trial.MAX_BYTES; i++) {
                body = changes.wild(body);
                assertEachStandsOnce(body, Collections.newSetFromMap(new IdentityHashMap<>()));
            }
            int length = body.toString().length();
            assertTrue(length < 16 * Trial.MAX_BYTES, "seed " + seed + ": " + length);
        }
    }

    private static void assertEachStandsOnce(JsonNode node, Set<JsonNode> seen) {
        assertEquals(node.isContainerNode(), node.isContainerNode() && seen.add(node), "a part stands twice");
        node.forEach(part -> assertEachStandsOnce(part, seen));
    }
}
