// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.resin.Resin;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;

/** Assumptions of the column about a water and a resin. */
public final class ColumnAssumptions {

    private ColumnAssumptions() {
    }

    /** Records where the ions of {@code feed} come from, and the assumptions about the bed. */
    public static void tell(WaterRequest water, WaterAnalysis analysis, FeedWater feed, Resin resin,
            Explanation explanation) {
        var share = water.calciumShare();
        explanation.assume("column.calciumShare", Message.of("assumed.softener.hardness",
                share.isPresent() ? Text.number(share.getAsDouble()) : "2/3"),
                share.isPresent() ? Origin.CALLER : Origin.DEFAULT);
        Message sodium = Text.measure(Text.number(1000 * feed.sodiumEquivalentsPerLitre()), "meq/L");
        if (analysis.sodiumMgPerL().isPresent()) {
            explanation.assume("column.sodium", Message.of("assumed.softener.waterTest", sodium), Origin.CALLER);
        } else if (analysis.dissolvedSolidsMgPerL().isPresent()) {
            explanation.assume("column.sodium", Message.of("assumed.softener.dissolvedSolidsOtherThan", sodium),
                    Origin.DERIVED);
        } else {
            explanation.assume("column.sodium", Message.of("assumed.softener.ordinaryGroundWater", sodium), Origin.DEFAULT);
        }
        explanation.assume("column.stages", Message.of("pattern.value", resin.stages()), Origin.DEFAULT);
        explanation.assume("column.regeneration", Message.of("assumed.softener.brineSlowRinseFast",
                Text.number(100 * Brining.DILUTED_SALT_SHARE), Text.number(Brining.SLOW_RINSE_BED_VOLUMES),
                Text.number(Brining.ASSUMED_FAST_RINSE_BED_VOLUMES)), Origin.DEFAULT);
    }
}
