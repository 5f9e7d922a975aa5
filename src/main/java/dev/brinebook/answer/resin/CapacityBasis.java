package dev.brinebook.answer.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.WornTable;
import dev.brinebook.wording.Message;

/** Says where a capacity comes from. */
public final class CapacityBasis {

    private CapacityBasis() {
    }

    /** The basis of the capacity at {@code pointer}. */
    public static void explain(String pointer, CapacityModel model, AnswerUnits units, Explanation explanation) {
        if (!(model instanceof ColumnCapacity column)) {
            explanation.because(pointer, Message.of("resin volume times the capacity of the salt dose, from the table"),
                    model.sourceKey());
            if (model instanceof WornTable worn) {
                explainWear(pointer, worn.sitesLeft(), explanation);
            }
            return;
        }
        explanation.because(pointer, Message.of("resin volume times what {0} stages in exchange equilibrium take from this"
                + " water up to {1} of hardness, cycle after cycle at this salt dose, times the efficiency of a real bed, {2}",
                column.resin().stages(), Text.of(units.hardness(column.endPointMgPerL())), Text.number(column.efficiency())),
                column.sourceKey());
        explanation.because(pointer, Message.of("how firmly the resin holds calcium, magnesium and potassium over sodium"),
                "BONNER-SMITH");
        explainScheme(pointer, explanation);
        explanation.because(pointer, Message.of("the efficiency makes the column give this table in its water"),
                "CP-WORKING-TABLE");
    }

    /** How a table is read for resin with a share of its sites left. */
    public static void explainWear(String pointer, double sitesLeft, Explanation explanation) {
        explanation.because(pointer, Message.of("with {0} % of the exchange sites left, {0} % of what the table gives at the salt dose"
                + " over that share: fewer sites with all of the salt, as the column has it within 5 %, or 9 % in resin nearly used up",
                Text.number(100 * sitesLeft)), "HELFFERICH");
    }

    /** Which scheme the stages follow, and how far it is from the reference, for the figure of a column at {@code pointer}. */
    public static void explainScheme(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("plug flow: brine, rinse and water move on from stage to stage unmixed, with"
                + " equilibrium after each move; within 0.2 % of the capacities of reference columns of 5 to 10 stages, and within"
                + " 0.4 % of their printed mean leakages if these count three rows of feed water, as it seems. Stirred stages"
                + " would give 2 to 8 % less capacity"), "PHREEQC");
    }

    /** The basis of the dose at {@code pointer} that a softener that stands there really gets. */
    public static void explainFoundDose(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("refill water times what a litre of water dissolves, over the resin volume; the"
                + " dose stated where minutes or flow of the refill are unknown"), "SALT-INSTITUTE");
    }
}
