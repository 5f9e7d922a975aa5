package dev.brinebook.softener.api;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.resin.Resin;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.api.WaterRequest;

/** What the column takes for granted of a water and a resin. */
public final class ColumnAssumptions {

    private ColumnAssumptions() {
    }

    /** Tells where the ions of {@code feed} come from, and what the bed is taken to be. */
    public static void tell(WaterRequest water, WaterAnalysis analysis, FeedWater feed, Resin resin,
            Explanation explanation) {
        if (water.calciumShare().isPresent()) {
            explanation.assume("column.calciumShare", Text.number(water.calciumShare().getAsDouble()) + " of the hardness",
                    Origin.CALLER);
        } else {
            explanation.assume("column.calciumShare", "2/3 of the hardness", Origin.DEFAULT);
        }
        String sodium = Text.number(1000 * feed.sodiumEquivalentsPerLitre()) + " meq/L";
        if (analysis.sodiumMgPerL().isPresent()) {
            explanation.assume("column.sodium", sodium + ", as tested", Origin.CALLER);
        } else if (analysis.dissolvedSolidsMgPerL().isPresent()) {
            explanation.assume("column.sodium", sodium + ", what the dissolved solids hold beside the hardness",
                    Origin.DERIVED);
        } else {
            explanation.assume("column.sodium", sodium + ", an ordinary ground water", Origin.DEFAULT);
        }
        explanation.assume("column.stages", String.valueOf(resin.stages()), Origin.DEFAULT);
        explanation.assume("column.regeneration", Text.number(100 * Brining.DILUTED_SALT_SHARE) + " % brine, slow rinse "
                + Text.number(Brining.SLOW_RINSE_BED_VOLUMES) + " and fast rinse "
                + Text.number(Brining.ASSUMED_FAST_RINSE_BED_VOLUMES) + " bed volumes of the raw water", Origin.DEFAULT);
    }
}
