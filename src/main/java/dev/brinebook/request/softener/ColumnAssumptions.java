package dev.brinebook.request.softener;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.resin.Resin;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;

/** What the column takes for granted of a water and a resin. */
public final class ColumnAssumptions {

    private ColumnAssumptions() {
    }

    /** Tells where the ions of {@code feed} come from, and what the bed is taken to be. */
    public static void tell(WaterRequest water, WaterAnalysis analysis, FeedWater feed, Resin resin,
            Explanation explanation) {
        var share = water.calciumShare();
        explanation.assume("column.calciumShare", Message.of("{0} of the hardness",
                share.isPresent() ? Text.number(share.getAsDouble()) : "2/3"),
                share.isPresent() ? Origin.CALLER : Origin.DEFAULT);
        Message sodium = Message.of("{0} {1}", Text.number(1000 * feed.sodiumEquivalentsPerLitre()), "meq/L");
        if (analysis.sodiumMgPerL().isPresent()) {
            explanation.assume("column.sodium", Message.of("{0}, as tested", sodium), Origin.CALLER);
        } else if (analysis.dissolvedSolidsMgPerL().isPresent()) {
            explanation.assume("column.sodium", Message.of("{0}, what the dissolved solids hold beside the hardness", sodium),
                    Origin.DERIVED);
        } else {
            explanation.assume("column.sodium", Message.of("{0}, an ordinary ground water", sodium), Origin.DEFAULT);
        }
        explanation.assume("column.stages", Message.of("{0}", resin.stages()), Origin.DEFAULT);
        explanation.assume("column.regeneration", Message.of("{0} % brine, slow rinse {1} and fast rinse {2} bed volumes of the"
                + " raw water", Text.number(100 * Brining.DILUTED_SALT_SHARE), Text.number(Brining.SLOW_RINSE_BED_VOLUMES),
                Text.number(Brining.ASSUMED_FAST_RINSE_BED_VOLUMES)), Origin.DEFAULT);
    }
}
