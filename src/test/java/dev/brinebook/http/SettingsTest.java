// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsTest {

    @Test
    void hasADefaultForEverything() {
        assertEquals(new Settings(8080, 9090, "0.0.0.0", 262_144, 20, 0, Set.of()), Settings.from(Map.of("HOME", "/")));
    }

    @Test
    void readsEveryVariable() {
        assertEquals(new Settings(1, 2, "127.0.0.1", 2_048, 3, 4, Set.of("https://a.example", "http://b.example:8081"), 5, 60, 7,
                        "/keys", 800, "https://api.example.org", "tel:+1-201-555-0123", OffsetDateTime.parse("2027-06-30T00:00:00Z")),
                Settings.from("""
                        PORT= 1\s
                        METRICS_PORT=2
                        HOST=127.0.0.1
                        MAX_BODY_BYTES=2048
                        STOP_SECONDS=3
                        DRAIN_SECONDS=4
                        CORS_ORIGINS=https://a.example , http://b.example:8081
                        REQUEST_SECONDS=5
                        MAX_CONNECTIONS=60
                        RATE_LIMIT_PER_MINUTE=7
                        API_KEYS_FILE=/keys
                        CALCULATION_MILLISECONDS=800
                        PUBLIC_URL=https://api.example.org
                        SECURITY_CONTACT=tel:+1-201-555-0123
                        SECURITY_EXPIRES=2027-06-30T00:00:00Z
                        """.lines().map(line -> line.split("=")).collect(Collectors.toMap(one -> one[0], one -> one[1]))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PORT           | 65536      | PORT must be a whole number from 0 to 65535, was 65536
            PORT           | -1         | PORT must be a whole number from 0 to 65535, was -1
            PORT           | http       | PORT must be a whole number from 0 to 65535, was http
            PORT           | 1e3        | PORT must be a whole number from 0 to 65535, was 1e3
            PORT           | 9090       | METRICS_PORT must differ from PORT, both are 9090
            MAX_BODY_BYTES | 1023       | MAX_BODY_BYTES must be a whole number from 1024 to 16777216, was 1023
            CORS_ORIGINS   | *          | CORS_ORIGINS must hold origins such as https://example.org, has *
            CORS_ORIGINS   | https://a.example/ | CORS_ORIGINS must hold origins such as https://example.org, has https://a.example/
            SECURITY_CONTACT | https://a.example | SECURITY_EXPIRES must be a time such as 2027-06-30T00:00:00Z, was empty
            SECURITY_EXPIRES | 2027-06-30 | SECURITY_EXPIRES must be a time such as 2027-06-30T00:00:00Z, was 2027-06-30
            """)
    void namesTheFault(String name, String value, String fault) {
        assertEquals(fault, assertThrows(IllegalArgumentException.class, () -> Settings.from(Map.of(name, value)))
                .getMessage());
    }

    /** RFC 9116, section 2.5.3. */
    @ParameterizedTest
    @ValueSource(strings = {"security@example.org", "http://example.org", "mailto:nobody", "mailto:a@example.org\nContact: x"})
    void takesAContactThatIsAUriAlone(String contact) {
        assertEquals("SECURITY_CONTACT must be such as mailto:security@example.org or https://example.org/report, was " + contact,
                assertThrows(IllegalArgumentException.class, () -> Settings.from(Map.of("SECURITY_CONTACT", contact,
                        "SECURITY_EXPIRES", "2027-06-30T00:00:00Z"))).getMessage());
    }

    @Test
    void namesEveryFaultAtOnce() {
        String message = assertThrows(IllegalArgumentException.class, () -> Settings.from(Map.of("PORT", "x",
                "STOP_SECONDS", "301", "CORS_ORIGINS", "ftp://a.example"))).getMessage();
        assertEquals("PORT must be a whole number from 0 to 65535, was x; STOP_SECONDS must be a whole number from 0 to 300,"
                + " was 301; CORS_ORIGINS must hold origins such as https://example.org, has ftp://a.example", message);
    }

    @Test
    void helpListsEveryVariableWithItsDefault() {
        for (String name : Settings.names()) {
            assertTrue(Settings.help().lines().anyMatch(line -> line.strip().startsWith(name + " ")
                    && line.contains("(default ")), name);
        }
        assertEquals(Settings.class.getRecordComponents().length, Settings.names().size());
    }
}
