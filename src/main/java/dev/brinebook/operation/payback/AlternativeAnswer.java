// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.resin.EfficiencyLine;
import java.util.List;

@SchemaDescription("One option and its results.")
public record AlternativeAnswer(
        @Property(value = "Your name for it.", example = "\"metered controller\"") String name,
        @Property(value = "Kind of option.", example = "\"metered\"") @Discriminator(others = "softening")
        AlternativeRequest.Kind kind,
        @Basis(formula = "formula.payback.existingSaltDoseOr", source = "CP-PRICES")
        @Property(value = "Salt dose used.", exceptKinds = "noSoftening") SaltDoseQuantity saltDose,
        @Basis(formula = "formula.payback.existingIntervalOrLongest", source = "FELLER")
        @Property(value = "Days between regenerations, if a clock starts them.", exceptKinds = "noSoftening",
                optional = "unless a clock starts them", unit = "days", example = "4") Integer clockDays,
        @Basis(formula = "formula.payback.capacityRestoredSaltDose", source = "WQP-2009")
        @Property(value = "Meter volume: softened water between regenerations.", exceptKinds = "noSoftening",
                optional = "unless a meter starts them")
        VolumeQuantity meterVolume,
        @Basis(formula = "payback.expectedRegenerationsYearSalt", source = "FELLER")
        @Property("A year on the simulated days.") YearlyUseAnswer year,
        @Basis(formula = "formula.payback.expectedYearSaltWater", source = "DAIAD")
        @Property("Bills in the first year, at today's prices.") MoneyLines bills,
        @Basis(formula = "formula.payback.firstCostRebateReplacements", source = "NIST-HB135")
        @Property("Life-cycle cost over the horizon, in today's money.") Money lifeCycleCost,
        @Basis(formula = "formula.payback.lifeCycleCostD", source = "NIST-HB135")
        @Property("The same as an equal annual amount.") Money annualEquivalent,
        @Property(value = "Benefit compared with the baseline.", optional = "for the baseline itself") WorthAnswer worth,
        @Basis(formula = "formula.payback.oneValueEveryInput", source = "MCKAY-1979")
        @Property(value = "The same with uncertain inputs.",
                optional = "for the baseline itself, and when no uncertainty is requested") UncertainWorthAnswer uncertain,
        @Basis(formula = "formula.payback.netPresentValueExpected", source = "NIST-HB135")
        @Property(value = "Break-even values. Empty for the baseline itself.", eachOf = BreakEvenAnswer.Of.class)
        List<BreakEvenAnswer> breakEven,
        @Basis(formula = "formula.payback.chlorideAtomicWeightsWaste", source = "CIAAW")
        @Property("Discharge to the drain.") DischargeAnswer discharge,
        @Property(value = "Published efficiency limits. Empty without softening.", maxItems = EfficiencyLine.COUNT)
        List<EfficiencyLineAnswer> efficiencyLines) {
}
