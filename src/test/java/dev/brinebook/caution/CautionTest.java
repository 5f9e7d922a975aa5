package dev.brinebook.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.source.Sources;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionTest {

    @Test
    void everyCautionHasASourceAndComesInOrder() {
        List<Caution> all = new ArrayList<>(Arrays.asList(Caution.values()));
        Collections.reverse(all);
        List<Caution> ordered = Caution.ordered(all);
        assertEquals(Caution.values().length, ordered.size());
        assertEquals(Severity.STOP, ordered.get(0).severity());
        assertEquals(Severity.INFO, ordered.get(ordered.size() - 1).severity());
        for (Caution caution : all) {
            assertEquals(caution.sourceKey(), Sources.get(caution.sourceKey()).key());
            assertTrue(caution.words().endsWith("."), caution.name());
        }
    }

    /** 50 °F is 10 °C: NIST SP 811. */
    @Test
    void speaksInEitherSystem() {
        assertTrue(Caution.COLD_WATER.words().contains("50 degrees Fahrenheit"));
        assertTrue(Caution.COLD_WATER.metricWords().contains("10 degrees Celsius"));
    }

    @Test
    void isSaidOnceOnly() {
        assertEquals(List.of(Caution.COLD_WATER), Caution.ordered(List.of(Caution.COLD_WATER, Caution.COLD_WATER)));
    }
}
