// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
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
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;

@SchemaDescription("The resin in the column. The tables apply to standard gel resin with the same share of its sites left.")
public record ColumnResinRequest(
        @Property(value = "Total capacity of the new resin: all its exchange sites.",
                min = Resin.MIN_NEW_EQUIVALENTS_PER_LITRE, max = Resin.MAX_TOTAL_EQUIVALENTS_PER_LITRE, unit = "eq/L",
                byDefault = Resin.STANDARD_EQUIVALENTS_PER_LITRE, fallback = "new gel resin") BedCapacityQuantity totalCapacity,
        @Property(value = "Age of the resin.", min = 0, max = ResinEfficiency.MAX_YEARS, unit = "years", example = "8",
                byDefault = ColumnResinRequest.ASSUMED_AGE_YEARS, fallback = "new") BigDecimal ageYears,
        @Property(value = "Exchange sites lost to chlorine and other oxidants per year. Used when the age is given.",
                min = ColumnResinRequest.MIN_YEARLY_LOSS_PERCENT, max = ColumnResinRequest.MAX_YEARLY_LOSS_PERCENT,
                unit = "%", example = "2", fallback = "1 with a private well or without free chlorine, 5 at 1 mg/L of free chlorine or "
                + "more, in proportion between; 3 with a public supply whose chlorine was not tested")
        BigDecimal yearlyCapacityLossPercent,
        @Property("Laboratory test of the resin. Replaces age and chlorine.") ResinTestRequest test,
        @Property(value = "Number of equilibrium stages of the bed. More stages give a sharper front.",
                min = Resin.MIN_STAGES, max = ColumnResinRequest.MAX_STAGES, example = "6", byDefault = Resin.ASSUMED_STAGES)
        Integer stages) implements Checked {

    static final double ASSUMED_AGE_YEARS = 0;
    static final double MIN_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.LOW_YEARLY_LOSS_SHARE;
    static final double MAX_YEARLY_LOSS_PERCENT = 100 * ResinEfficiency.HIGH_YEARLY_LOSS_SHARE;
    /** Sharper than any household bed, and the maximum for a chart of forty doses within a second. */
    static final int MAX_STAGES = 40;

    private static final ColumnResinRequest NONE = new ColumnResinRequest(null, null, null, null, null);

    @Override
    public void check(Violations at) {
        if (test != null && !at.here() && !Guard.isWithin(newEquivalentsPerLitre() * test.sitesLeft(newEquivalentsPerLitre()),
                Resin.MIN_TOTAL_EQUIVALENTS_PER_LITRE, Resin.MAX_TOTAL_EQUIVALENTS_PER_LITRE)) {
            at.add("test", Code.INCONSISTENT, Message.of("columnResin.mustLeaveLeastEq",
                    Text.number(Resin.MIN_TOTAL_EQUIVALENTS_PER_LITRE)));
        }
    }

    /** {@code given}, or standard new resin. */
    static ColumnResinRequest orNew(ColumnResinRequest given) {
        return given == null ? NONE : given;
    }

    private double newEquivalentsPerLitre() {
        return totalCapacity == null ? Resin.STANDARD_EQUIVALENTS_PER_LITRE
                : BedCapacityUnit.EQUIVALENT_PER_LITRE.fromBase(totalCapacity.inBase());
    }

    /** The resin when it was new, with every default recorded in {@code explanation}. */
    Resin whenNew(Explanation explanation) {
        Resolved standard = Resolved.of("/resin/totalCapacity", Resin.STANDARD_EQUIVALENTS_PER_LITRE,
                BedCapacityUnit.EQUIVALENT_PER_LITRE.symbol()).byDefault("WCP-2011").noting(Message.of("assumed.resin.newGelResin"));
        explanation.assume(totalCapacity == null ? standard : Resolved.of(standard.place(), totalCapacity));
        int count = (int) explanation.resolve(stages, Resin.ASSUMED_STAGES,
                Resolved.of("/resin/stages", Resin.ASSUMED_STAGES, null).byDefault("OWN-ASSUMPTION"));
        return new Resin(newEquivalentsPerLitre(), Resin.STANDARD.voidShare(), count, Selectivity.GEL_8_PERCENT);
    }

    /** Share of its sites that a test found or that age has left, recorded in {@code explanation}. */
    double sitesLeft(WaterAnalysis water, Explanation explanation) {
        if (test != null) {
            explanation.because("/totalCapacity", Message.of("formula.resin.totalCapacityNewResin"), "REQUEST");
            return test.sitesLeft("/resin/test", newEquivalentsPerLitre(), explanation);
        }
        double years = explanation.resolve(ageYears, ASSUMED_AGE_YEARS,
                Resolved.of("/resin/ageYears", ASSUMED_AGE_YEARS, "years").byDefault("OWN-ASSUMPTION"));
        if (ageYears == null) {
            return 1;
        }
        double usualLoss = 100 * ResinState.assumedYearlyLossShare(water);
        double loss = explanation.resolve(yearlyCapacityLossPercent, usualLoss,
                Resolved.of("/resin/yearlyCapacityLossPercent", usualLoss, "%").byDefault("UFC-3-240-13FN")
                        .noting(Message.of("assumed.common.remainingExchangeSites")));
        explanation.because("/totalCapacity", Message.of("formula.resin.totalCapacityNewResinShare"),
                "UFC-3-240-13FN");
        return ResinEfficiency.remainingShare(years, loss / 100);
    }
}
