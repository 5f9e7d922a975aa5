// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.guard.NoResultReason;
import org.junit.jupiter.api.Test;

class BlendedSofteningTest {

    /** Textbook problem, answer computed: 0.2 m3 at 25 kg/m3 last 28.7 days at 0.174 kg a day; here with 10 kg of salt. */
    @Test
    void dividesTheCapacityByTheLoad() {
        var softening = new BlendedSoftening(5_000, 10_000, 174);
        assertEquals(28.7, softening.days().value(), 0.05);
        assertEquals(365 / 28.7 * 10_000, softening.saltGramsPerYear(), 200);
    }

    @Test
    void neverRegeneratesWhereNothingIsUsed() {
        assertEquals(NoResultReason.NEVER_REGENERATES, new BlendedSoftening(5_000, 10_000, 0).days().reason());
        assertEquals(0, new BlendedSoftening(5_000, 10_000, 0).saltGramsPerYear());
        assertEquals(NoResultReason.NEVER_REGENERATES, new BlendedSoftening(5_000, 10_000, 1e-320).days().reason());
        assertThrows(IllegalArgumentException.class, () -> new BlendedSoftening(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new BlendedSoftening(1, 1, -1));
    }
}
