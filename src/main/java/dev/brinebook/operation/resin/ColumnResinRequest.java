package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.BedCapacityUnit;
import dev.brinebook.request.softener.ResinState;
import dev.brinebook.request.softener.ResinTestRequest;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Selectivity;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The resin that the column is made of. The tables are those of standard gel resin, with as large a share of its sites left.")
public record ColumnResinRequest(
        @Property(value = "Total capacity of the resin when it was new: all its exchange sites.",
                min = Resin.MIN_NEW_EQUIVALENTS_PER_LITRE, max = Resin.MAX_TOTAL_EQUIVALENTS_PER_LITRE, unit = "eq/L",
                fallback = "2 eq/L") BedCapacityQuantity totalCapacity,
        @Property(value = "Age of the resin.", min = 0, max = ResinEfficiency.MAX_YEARS, unit = "years", example = "8",
                fallback = "new") BigDecimal ageYears,
        @Property(value = "Exchange sites that chlorine and other oxidants take in a year, where the age is given.",
                min = ColumnResinRequest.MIN_YEARLY_LOSS_PERCENT, max = ColumnResinRequest.MAX_YEARLY_LOSS_PERCENT,
                unit = "%", example = "2", fallback = "1 on a private well or without free chlorine, 5 from 1 mg/L of free"
                + " chlorine on, in proportion between; 3 on a public supply whose chlorine was not tested")
        BigDecimal yearlyCapacityLossPercent,
        @Property("A laboratory's test of the resin, used instead of age and chlorine.") ResinTestRequest test,
        @Property(value = "Equal stages that the bed behaves like: the more, the sharper its front.",
                min = Resin.MIN_STAGES, max = ColumnResinRequest.MAX_STAGES, example = "6", fallback = "6")
        Integer stages) implements Checked {

    static final double MIN_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.LOW_YEARLY_LOSS_SHARE;
    static final double MAX_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.HIGH_YEARLY_LOSS_SHARE;
    /** Sharper than any household bed, and as many as a chart of forty doses may take a second for. */
    static final int MAX_STAGES = 40;

    private static final ColumnResinRequest NONE = new ColumnResinRequest(null, null, null, null, null);

    @Override
    public void check(Violations at) {
        if (test != null && !at.here() && !Guard.isWithin(newEquivalentsPerLitre() * test.sitesLeft(newEquivalentsPerLitre()),
                Resin.MIN_TOTAL_EQUIVALENTS_PER_LITRE, Resin.MAX_TOTAL_EQUIVALENTS_PER_LITRE)) {
            at.add("test", Code.INCONSISTENT, Message.of("leaves less than the {0} eq/L that the column can be asked for",
                    Text.number(Resin.MIN_TOTAL_EQUIVALENTS_PER_LITRE)));
        }
    }

    /** {@code given}, or standard new resin. */
    static ColumnResinRequest orNew(ColumnResinRequest given) {
        return given == null ? NONE : given;
    }

    private double newEquivalentsPerLitre() {
        return totalCapacity == null ? Resin.STANDARD.totalEquivalentsPerLitre()
                : BedCapacityUnit.EQUIVALENT_PER_LITRE.fromBase(totalCapacity.inBase());
    }

    /** The resin when it was new, with every default told to {@code explanation}. */
    Resin whenNew(Explanation explanation) {
        explanation.assume("resin.totalCapacity", totalCapacity == null ? Message.of("2 eq/L, new gel resin")
                : Text.of(totalCapacity), totalCapacity == null ? Origin.DEFAULT : Origin.CALLER);
        int count = stages == null ? Resin.ASSUMED_STAGES : stages;
        explanation.assume("column.stages", Message.of("{0}", count), stages == null ? Origin.DEFAULT : Origin.CALLER);
        return new Resin(newEquivalentsPerLitre(), Resin.STANDARD.voidShare(), count, Selectivity.GEL_8_PERCENT);
    }

    /** Share of its sites that a test found or that age has left, told to {@code explanation}. */
    double sitesLeft(WaterAnalysis water, Explanation explanation) {
        if (test != null) {
            explanation.because("/totalCapacity", Message.of("of which the test of the resin found this much left"), "REQUEST");
            return test.sitesLeft("resin.test", newEquivalentsPerLitre(), explanation);
        }
        double years = explanation.orDefault("resin.ageYears", ageYears, 0,
                age -> Message.counted("{0} year", "{0} years", age));
        if (ageYears == null) {
            return 1;
        }
        double loss = explanation.orDefault("resin.yearlyCapacityLossPercent", yearlyCapacityLossPercent,
                100 * ResinState.assumedYearlyLossShare(water), percent -> Message.of("{0} % of the sites that are left", percent));
        explanation.because("/totalCapacity", Message.of("of which the yearly loss takes its share, year after year"),
                "UFC-3-240-13FN");
        return ResinEfficiency.remainingShare(years, loss / 100);
    }
}
