package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
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

@About("One salt dose, metered, with the smallest reserve that keeps to the service standard.")
public record TriedDose(
        @Property("The dose.") SaltDoseQuantity saltDose,
        @Property("Capacity that it restores.") CapacityQuantity capacity,
        @Property("Hardness removed per salt when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property("The smallest reserve that keeps to the service standard; all that the meter counts where none does.")
        VolumeQuantity reserve,
        @Property("Mean days between two regenerations.") FigureAnswer intervalDays,
        @Property("Salt of a year.") MassQuantity saltPerYear,
        @Property("Regeneration water of a year.") VolumeQuantity waterPerYear,
        @Property("Both at their prices.") Money costPerYear,
        @Property(value = "Hard days to be expected in a year.", min = 0, unit = "days a year", example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "Whether it keeps to the service standard.", example = "true") Boolean keepsServiceStandard,
        @Property(value = "Hardness of all the softened water mixed.",
                optional = "when capacity is counted by the table, which does not tell it") HardnessQuantity meanLeakage,
        @Property(value = "Whether the softened water keeps below the end point of hardness; a table takes it for granted.",
                example = "true") Boolean holdsEndPoint) {

    static TriedDose of(DoseChoice.Option option, AnswerUnits units, Currency currency) {
        YearlyTotals year = option.year();
        var dosed = option.dosed();
        Optional<Settled> cycle = cycle(option);
        return new TriedDose(units.saltDose(dosed.saltDoseGramsPerLitre()), units.capacity(dosed.capacityGrams()),
                units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                units.volume(Math.min(option.settings().reserveLitres(), option.settings().meterLitres())),
                FigureAnswer.of(option.intervalDays(), 1), units.mass(year.saltGrams() / 1000),
                units.volume(year.waterLitres()), Money.of(option.costPerYear(), currency), Rounding.toThousandth(year.hardDays()),
                option.settings().keepsStandard(),
                cycle.map(one -> units.hardness(one.meanLeakageMgPerL())).orElse(null), option.holdsEndPoint());
    }

    /** Whether the leakage of a dose is told: by the column alone. */
    static boolean tellsLeakage(DoseChoice.Option option) {
        return cycle(option).isPresent();
    }

    private static Optional<Settled> cycle(DoseChoice.Option option) {
        var dosed = option.dosed();
        return dosed.softener().capacity().cycle(dosed.softener().salt(), dosed.saltDoseGramsPerLitre());
    }
}
