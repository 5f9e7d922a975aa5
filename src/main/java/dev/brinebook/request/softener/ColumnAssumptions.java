// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.util.OptionalDouble;

/** Assumptions of the column about a water and a resin. */
public final class ColumnAssumptions {

    private ColumnAssumptions() {
    }

    /** Records where the ions of {@code feed} come from, and the assumptions about the bed. */
    public static void assume(WaterRequest water, WaterAnalysis analysis, FeedWater feed, Explanation explanation) {
        OptionalDouble share = water.calciumShare();
        explanation.assume(share.isPresent()
                ? Resolved.of("calciumShareOfHardness", share.getAsDouble(), null).estimated("SM2340B")
                : Resolved.of("calciumShareOfHardness", FeedWater.ASSUMED_CALCIUM_SHARE, null).byDefault("RESIN-DATA-SHEET"));
        Resolved sodium = Resolved.of("/water/sodium", AnswerUnits.of(explanation).concentration(
                1000 * AtomicWeights.SODIUM * feed.sodiumEquivalentsPerLitre()));
        if (water.sodium() != null) {
            explanation.assume(Resolved.of("/water/sodium", water.sodium()));
        } else if (analysis.dissolvedSolidsMgPerL().isPresent()) {
            explanation.assume(sodium.estimated("CIAAW").noting(Message.of("assumed.softener.dissolvedSolidsOtherThan")));
        } else {
            explanation.assume(sodium.byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.softener.ordinaryGroundWater")));
        }
        explanation.assume(Resolved.of("columnBrineStrength", 100 * Brining.DILUTED_SALT_SHARE, "%").byDefault("CP-CYCLE"));
        explanation.assume(Resolved.of("columnSlowRinse", Brining.SLOW_RINSE_BED_VOLUMES, "bedVolumes").byDefault("UFC-3-240-13FN")
                .noting(Message.of("assumed.softener.rawWater")));
        explanation.assume(Resolved.of("columnFastRinse", Brining.ASSUMED_FAST_RINSE_BED_VOLUMES, "bedVolumes")
                .byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.softener.rawWater")));
    }
}
