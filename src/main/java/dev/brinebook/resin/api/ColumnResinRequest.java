package dev.brinebook.resin.api;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.BedCapacityUnit;
import dev.brinebook.quantity.api.BedCapacityQuantity;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.resin.Selectivity;
import dev.brinebook.softener.api.ResinState;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The resin that the column is made of. The tables are those of standard gel resin whatever stands here.")
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
        @Property(value = "Equal stages that the bed behaves like: the more, the sharper its front.",
                min = Resin.MIN_STAGES, max = ColumnResinRequest.MAX_STAGES, example = "6", fallback = "6")
        Integer stages) {

    static final double MIN_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.LOW_YEARLY_LOSS_SHARE;
    static final double MAX_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.HIGH_YEARLY_LOSS_SHARE;
    /** Sharper than any household bed, and as many as a chart of forty doses may take a second for. */
    static final int MAX_STAGES = 40;

    /** The resin that {@code given} makes, with every default told to {@code explanation}. */
    static Resin toDomain(ColumnResinRequest given, WaterAnalysis water, Explanation explanation) {
        ColumnResinRequest resin = given == null ? new ColumnResinRequest(null, null, null, null) : given;
        double total = resin.totalCapacity == null ? Resin.STANDARD.totalEquivalentsPerLitre()
                : BedCapacityUnit.EQUIVALENT_PER_LITRE.fromBase(resin.totalCapacity.inBase());
        explanation.assume("resin.totalCapacity", resin.totalCapacity == null ? Message.of("2 eq/L, new gel resin")
                : Text.of(resin.totalCapacity), resin.totalCapacity == null ? Origin.DEFAULT : Origin.CALLER);
        int stages = resin.stages == null ? Resin.ASSUMED_STAGES : resin.stages;
        explanation.assume("column.stages", Message.of("{0}", stages), resin.stages == null ? Origin.DEFAULT : Origin.CALLER);
        return new Resin(total, Resin.STANDARD.voidShare(), stages, Selectivity.GEL_8_PERCENT)
                .withSitesLeft(sitesLeft(resin, water, explanation));
    }

    private static double sitesLeft(ColumnResinRequest resin, WaterAnalysis water, Explanation explanation) {
        double years = explanation.orDefault("resin.ageYears", resin.ageYears, 0,
                age -> Message.counted("{0} year", "{0} years", age));
        if (resin.ageYears == null) {
            return 1;
        }
        double loss = explanation.orDefault("resin.yearlyCapacityLossPercent", resin.yearlyCapacityLossPercent,
                100 * ResinState.assumedYearlyLossShare(water), percent -> Message.of("{0} % of the sites that are left", percent));
        explanation.because("/totalCapacity", Message.of("of which the yearly loss takes its share, year after year"),
                "UFC-3-240-13FN");
        return ResinEfficiency.remainingShare(years, loss / 100);
    }
}
