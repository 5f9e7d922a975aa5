// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.source.Table;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which part of the indoor use passes the softener, when some branches are left hard. */
public final class SoftenedShare {

    /**
     * Hot water as a share of indoor use.
     *
     * <p>Source: [REU-2016-PERSON].
     */
    public static final double HOT_SHARE = 0.33;
    /** Cold water used at the kitchen sink as a share of all faucet use; no source splits the faucets. */
    public static final double ASSUMED_KITCHEN_COLD_SHARE_OF_FAUCETS = 0.25;

    private static final Map<String, Double> END_USES = Table.read("/household/end-uses.csv", ',', 2).stream()
            .collect(Collectors.toUnmodifiableMap(row -> row[0], row -> Double.valueOf(row[1])));

    /** A branch of the house's plumbing that can be left unsoftened. Outdoor taps are left out of indoor use anyway. */
    public enum Branch {
        TOILETS, KITCHEN_COLD, ALL_COLD
    }

    private SoftenedShare() {
    }

    /**
     * Share of the indoor use that is softened.
     *
     * <pre>share = 1 - sum of the end uses left hard / all end uses</pre>
     *
     * <p>End uses in gallons per household and day: toilets are 33 of 138; all cold leaves the hot share.
     * Validity: indoor use only.
     * Source: [REU-2016] end uses.
     * Deviation: the kitchen's share of faucet use is assumed, {@link #ASSUMED_KITCHEN_COLD_SHARE_OF_FAUCETS}.
     *
     * @param leftHard branches that bypass the softener; all cold includes the others
     */
    public static double of(Set<Branch> leftHard) {
        if (leftHard.contains(Branch.ALL_COLD)) {
            return HOT_SHARE;
        }
        double hard = 0;
        if (leftHard.contains(Branch.TOILETS)) {
            hard += END_USES.get("toilet");
        }
        if (leftHard.contains(Branch.KITCHEN_COLD)) {
            hard += ASSUMED_KITCHEN_COLD_SHARE_OF_FAUCETS * END_USES.get("faucet");
        }
        return 1 - hard / allGallons();
    }

    /** All end uses together, US gallons per household and day. */
    static double allGallons() {
        return END_USES.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
