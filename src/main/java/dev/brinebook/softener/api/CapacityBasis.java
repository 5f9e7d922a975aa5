package dev.brinebook.softener.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;

/** Says where a capacity comes from. */
public final class CapacityBasis {

    private CapacityBasis() {
    }

    /** The basis of the capacity at {@code pointer}; {@code remark} follows it, and may be empty. */
    public static void explain(String pointer, CapacityModel model, String remark, Explanation explanation) {
        if (model instanceof CapacityTable table) {
            explanation.because(pointer, "resin volume times the capacity of the salt dose, from the table" + remark,
                    table.sourceKey());
            return;
        }
        ColumnCapacity column = (ColumnCapacity) model;
        explanation.because(pointer, "resin volume times what " + column.resin().stages() + " stages in exchange equilibrium"
                + " take from this water up to " + Text.number(column.endPointMgPerL()) + " mg/L of hardness, cycle after"
                + " cycle at this salt dose, times the efficiency of a real bed, " + Text.number(column.efficiency()) + remark,
                column.sourceKey());
        explanation.because(pointer, "how firmly the resin holds calcium, magnesium and potassium over sodium",
                "BONNER-SMITH");
        explanation.because(pointer, "the efficiency makes the column give this table in its water", "CP-WORKING-TABLE");
    }
}
