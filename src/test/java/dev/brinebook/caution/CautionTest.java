// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
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
            assertTrue(Message.of(caution).toString().endsWith(".") || Message.of(caution).toString().endsWith("?"), caution.name());
            assertNotNull(caution.reader());
        }
    }

    /** 50 °F is 10 °C: NIST SP 811. */
    @Test
    void speaksInEitherSystem() {
        assertTrue(Message.of(Caution.COLD_WATER).toString().contains("50\u00a0°F"));
        assertTrue(Message.of(Caution.COLD_WATER).inMetricUnits(true).toString().contains("10\u00a0°C"));
    }

    /** A severity never comes after a lesser one, so that the rank is one list. */
    @Test
    void isRankedWithinItsSeverity() {
        Severity before = Severity.STOP;
        for (Caution caution : Caution.values()) {
            assertTrue(caution.severity().compareTo(before) >= 0, caution.name());
            before = caution.severity();
        }
    }

    @Test
    void putsFiveAtMostInFrontAndWhatSaysStopAndWhatQuestionsTheInputFirst() {
        Set<Caution> front = Caution.inFront(List.of(Caution.values()));
        assertEquals(Caution.MOST_IN_FRONT, front.size());
        assertTrue(front.contains(Caution.IRON_TREAT_FIRST));
        assertTrue(front.contains(Caution.HARDNESS_MAYBE_MG_PER_L));
        assertEquals(Set.of(Caution.SODIUM_RESTRICTED_DIET, Caution.SEWER_SALT_LIMITS, Caution.POWER_AND_PRESSURE, Caution.DRAIN_AIR_GAP,
                Caution.LOCAL_CODE_DECIDES), Caution.inFront(List.of(Caution.LEAD_COPPER_PLUMBING, Caution.LOCAL_CODE_DECIDES,
                Caution.DRAIN_AIR_GAP, Caution.EFFICIENCY_NOT_CERTIFIED, Caution.POWER_AND_PRESSURE, Caution.SEWER_SALT_LIMITS,
                Caution.SODIUM_RESTRICTED_DIET)));
        assertEquals(Set.of(), Caution.inFront(List.of()));
    }

    @Test
    void givesTheEvidenceAgainstMoreLeadBesideTheWarning() {
        assertTrue(Message.of(Caution.LEAD_COPPER_PLUMBING).toString().contains("no pattern"),
                "EPA/600/R-98/044; Sorg, Schock and Lytle 1999");
        assertTrue(Sources.get(Caution.LEAD_COPPER_PLUMBING.sourceKey()).cited().contains("EPA/600/R-98/044"));
    }

    @Test
    void isSaidOnceOnly() {
        assertEquals(List.of(Caution.COLD_WATER), Caution.ordered(List.of(Caution.COLD_WATER, Caution.COLD_WATER)));
    }
}
