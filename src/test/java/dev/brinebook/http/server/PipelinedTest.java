// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import java.io.IOException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several requests sent at once on one connection (RFC 9112, section 9.3.2), and what is none behind one that is. */
class PipelinedTest {

    private static final String GET = "GET " + Served.CONVERSION + "?value=%d&unit=gpg HTTP/1.1\r\nHost: localhost\r\n%s\r\n";
    private static final String LAST = "Connection: close\r\n";

    private final int port = Served.SERVER.port();

    @Test
    void areAnsweredInTheirOrder() throws IOException {
        StringBuilder requests = new StringBuilder();
        for (int value = 11; value <= 40; value++) {
            requests.append(GET.formatted(value, value == 40 ? LAST : ""));
        }
        String[] answers = RawHttp.sendAsItIs(port, requests.toString()).split("(?=HTTP/1\\.1 )");
        assertEquals(30, answers.length);
        for (int i = 0; i < answers.length; i++) {
            assertTrue(answers[i].startsWith("HTTP/1.1 200 ") && answers[i].contains("{\"value\":" + (11 + i) + ",\"unit\":\"gpg\"}"),
                    answers[i]);
        }
    }

    /** A body longer than it was said to be is read as the next request, which it is not. */
    @ParameterizedTest
    @ValueSource(strings = {"{\"hardness\": 1}\r\n\r\n", "\u0000\u0001\u0002\u0003\r\n\r\n", "GET\r\n\r\n", "GET / HTTP/1.1 or so\r\n\r\n",
        "\u0016\u0003\u0001\u0002\u0000\u0001\u0000\u0001\u00fc\u0003\u0003\r\n\r\n", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"})
    void aProperOneIsAnsweredAndGarbageEndsTheConnection(String garbage) throws IOException {
        String[] answers = RawHttp.sendAsItIs(port, GET.formatted(11, "") + garbage + GET.formatted(12, LAST))
                .split("(?=HTTP/1\\.1 )");
        assertEquals(2, answers.length, String.join("", answers));
        assertTrue(answers[0].startsWith("HTTP/1.1 200 "), answers[0]);
        assertTrue(answers[1].matches("(?s)HTTP/1\\.1 (400|505|426) .*"), answers[1]);
    }

    @Test
    void randomBytesGetNoAnswerButARefusal() throws IOException {
        long seed = 20_261_125;
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            byte[] bytes = new byte[1 + random.nextInt(200)];
            random.nextBytes(bytes);
            String garbage = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
            String answers = RawHttp.sendAsItIs(port, GET.formatted(11, "") + garbage + "\r\n\r\n");
            String second = answers.substring(answers.indexOf("HTTP/1.1 ", 1) < 0 ? answers.length() : answers.indexOf("HTTP/1.1 ", 1));
            assertTrue(answers.startsWith("HTTP/1.1 200 "), "seed " + seed + ", number " + i);
            assertTrue(second.matches("(?s)(HTTP/1\\.1 4\\d\\d .*)?"), "seed " + seed + ", number " + i + ": " + second);
        }
    }
}
