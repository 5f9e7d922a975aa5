// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Settings;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the heap has room for; what it takes was measured with the image's flags by the hostile step. */
class HeapPlanTest {

    private static Settings settings(int maxBodyBytes, int connections) {
        return new Settings(0, 0, "127.0.0.1", maxBodyBytes, 1, 0, Set.of(), 1, connections, 0, "", 10_000);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # heap MiB, body bytes, connections wanted, planned
            93,  262144,  2000,   2000
            186, 262144,  2000,   2000
            186, 262144,  100000, 9000
            """)
    void lowersConnectionsThatDoNotFit(long heap, int body, int wanted, int planned) {
        HeapPlan plan = HeapPlan.of(settings(body, wanted), heap << 20);
        assertEquals(planned, plan.connections(), 0.2 * planned * (planned == wanted ? 0 : 1));
        assertTrue(plan.arrivingBytes() > body && plan.calculatingBytes() >= HeapPlan.ofAgent(body));
    }

    @Test
    void refusesABodyThatDoesNotFit() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> HeapPlan.of(settings(16_777_216, 10), 93L << 20));
        assertTrue(refused.getMessage().contains("MAX_BODY_BYTES=16777216"), refused.getMessage());
    }
}
