// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Source: by definition. */
class LastResultsCacheTest {

    @Test
    void calculatesAgainOnlyWhatItNoLongerHolds() {
        List<Integer> calculated = new ArrayList<>();
        LastResultsCache<Integer, Integer> squares = new LastResultsCache<>(2, asked -> {
            calculated.add(asked);
            return asked * asked;
        });
        for (int asked : new int[] {3, 4, 3, 5, 3, 4}) {
            assertEquals(asked * asked, squares.of(asked));
        }
        assertEquals(List.of(3, 4, 5, 4), calculated);
    }
}
