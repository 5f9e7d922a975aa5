// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.ColumnResult.Settled;
import dev.brinebook.softener.DoseChoice;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

@SchemaDescription("One salt dose with a meter and the smallest reserve that meets the service standard.")
public record DoseResult(
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @From("saltDose")
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Basis(formula = "formula.common.capacitySaltPerRegeneration", source = "WQP-2009")
        @From({"capacity", "saltDose"})
        @Property("Salt efficiency when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Basis(formula = "formula.softener.smallestReserveStepsController", source = "FELLER")
        @Property("Smallest reserve that meets the service standard. The whole meter volume if none does.")
        VolumeQuantity reserve,
        @Property("Mean days between regenerations.") OptionalResultAnswer intervalDays,
        @Property("Salt per year.") MassQuantity saltPerYear,
        @Property("Regeneration water per year.") VolumeQuantity waterPerYear,
        @Basis(formula = "formula.softener.saltWaterYearTheir", source = "CP-PRICES")
        @From({"saltPerYear", "waterPerYear"})
        @Property("Cost of salt and regeneration water per year.") Money costPerYear,
        @Property(value = "Expected hard days per year.", min = 0, unit = "days a year", example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "Whether it meets the service standard.", example = "true") Boolean keepsServiceStandard,
        @Basis(formula = "formula.softener.hardnessStagesLetThrough", source = "HELFFERICH")
        @Property(value = "Mean hardness of the softened water.",
                optional = "when the capacity method is table, which does not give it") HardnessQuantity meanLeakage,
        @Property(value = "Whether the softened water stays below the end point of hardness. Always assumed with the capacity table.",
                example = "true") Boolean holdsEndPoint) {

    static DoseResult of(DoseChoice.Option option, AnswerUnits units, Currency currency) {
        YearlyTotals year = option.year();
        var dosed = option.dosed();
        Optional<Settled> cycle = cycle(option);
        return new DoseResult(units.saltDose(dosed.saltDoseGramsPerLitre()), units.capacity(dosed.capacityGrams()),
                units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                units.volume(Math.min(option.settings().reserveLitres(), option.settings().meterLitres())),
                OptionalResultAnswer.of(option.intervalDays(), 1), units.mass(year.saltGrams() / 1000),
                units.volume(year.waterLitres()), Money.of(option.costPerYear(), currency), Rounding.toThousandth(year.hardDays()),
                option.settings().keepsStandard(),
                cycle.map(one -> units.hardness(one.meanLeakageMgPerL())).orElse(null), option.holdsEndPoint());
    }

    private static Optional<Settled> cycle(DoseChoice.Option option) {
        var dosed = option.dosed();
        return dosed.softener().capacity().cycle(dosed.softener().salt(), dosed.saltDoseGramsPerLitre());
    }
}
