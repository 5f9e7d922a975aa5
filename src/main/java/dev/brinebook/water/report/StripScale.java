// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import java.util.List;
import java.util.Optional;

/**
 * The blocks of colour of a test strip. A strip that matches a block lies anywhere between half the way to the one below and half the
 * way to the one above. Source: [GUM] 4.3.7.
 *
 * @param blocks the values of the blocks, rising, in one unit
 */
public record StripScale(List<Double> blocks) {

    private static final double UNIFORM = Math.sqrt(12);

    public StripScale {
        blocks = List.copyOf(blocks);
        for (int i = 1; i < blocks.size(); i++) {
            Guard.positive(blocks.get(i) - blocks.get(i - 1), "step of the scale");
        }
    }

    /** What a match of block {@code place} means, the first being 0; nothing for the top one, which has no upper end. */
    public Optional<Estimate> estimate(int place) {
        if (place == blocks.size() - 1) {
            return Optional.empty();
        }
        double high = upperEnd(place);
        double low = place == 0 ? blocks.get(0) : upperEnd(place - 1);
        return Optional.of(new Estimate((low + high) / 2, (high - low) / UNIFORM));
    }

    /** What the top block means at least. */
    public double atLeast() {
        return upperEnd(blocks.size() - 2);
    }

    private double upperEnd(int place) {
        return (blocks.get(place) + blocks.get(place + 1)) / 2;
    }
}
