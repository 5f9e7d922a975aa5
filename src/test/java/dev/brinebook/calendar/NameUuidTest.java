// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Names of events and folded lines. */
class NameUuidTest {

    /** In the namespace of DNS names: uuid.uuid5 of Python 3, and the reference page of OpenTofu's function uuidv5. */
    @Test
    void makesTheUuidThatOthersMake() {
        UUID dns = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
        assertEquals("2ed6657d-e927-568b-95e1-2665a8aea6a2", NameUuid.of(dns, "www.example.com").toString());
        assertEquals("df1e675d-b743-5f6c-9952-6311d0f141df", NameUuid.of(dns, "www.opentofu.org").toString());
        assertEquals(5, NameUuid.of(dns, "").version());
        assertEquals(2, NameUuid.of(dns, "").variant());
    }

    /** RFC 5545, section 3.1: lines of at most 75 octets without the break; unfolding removes CRLF and one blank. */
    @Test
    void foldsByOctetsWithoutCuttingALetter() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < 400; i++) {
                text.append(random.nextInt(20) == 0 ? "\r\n" : new String[] {"a", "\u00e9", "\u6c34", "\ud83d\udca7"}
                        [random.nextInt(4)]);
            }
            String folded = FoldedText.of(text.toString());
            assertEquals(text.toString(), folded.replace("\r\n ", ""), "seed " + seed);
            for (String line : folded.split("\r\n")) {
                assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, "seed " + seed);
                assertEquals(line, new String(line.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
            }
        }
    }
}
