// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.source.Table;
import java.util.List;

/**
 * What a softening resin tolerates in its feed. Sources differ by a factor of five on chlorine: a limit is where care begins, not where
 * a resin fails.
 *
 * <p>Sources: [CP-RESIN-CARE], [RESIN-FEED-2010], [UFC-3-240-13], [NDSU-WQ1031], [TEN-STATES].
 *
 * @param parameter what is limited
 * @param high the most, in the unit that the parameter is calculated with
 * @param sourceKey key of its source
 */
public record ResinLimit(Parameter parameter, double high, String sourceKey) {

    private static final List<ResinLimit> ALL = List.copyOf(Table.read("/water/report-resin-limits.csv", '|', 3).stream()
            .map(row -> new ResinLimit(Parameter.named(row[0]), Double.parseDouble(row[1]), row[2])).toList());

    public static List<ResinLimit> all() {
        return ALL;
    }

    /** Those that a sample is above, in the order of the table. */
    public static List<ResinLimit> exceeded(Sample sample) {
        return ALL.stream().filter(limit -> sample.orZero(limit.parameter()) > limit.high()).toList();
    }
}
