package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import java.util.List;

@About("One way of going on, and what it comes to.")
public record AlternativeAnswer(
        @Property(value = "The caller's name for it.", example = "\"metered controller\"") String name,
        @Property(value = "The kind.", example = "\"metered\"") @TellsKind(others = "softening")
        AlternativeRequest.Kind kind,
        @Property(value = "Salt dose that it is run at.", exceptKinds = "noSoftening") SaltDoseQuantity saltDose,
        @Property(value = "Days between regenerations, where a clock starts them.", exceptKinds = "noSoftening",
                optional = "unless a clock does", unit = "days", example = "4") Integer clockDays,
        @Property(value = "What the meter counts down from.", exceptKinds = "noSoftening",
                optional = "unless a meter starts them")
        VolumeQuantity meterVolume,
        @Property("A year on the days tried.") YearlyUseAnswer year,
        @Property("The first year's bills, at today's prices.") MoneyLines bills,
        @Property("All that is paid over the horizon, in today's worth.") Money lifeCycleCost,
        @Property("The same as an equal amount a year.") Money annualEquivalent,
        @Property(value = "What it is worth against the baseline.", optional = "for the baseline itself") WorthAnswer worth,
        @Property(value = "The same when not everything is known.",
                optional = "for the baseline itself, and when no uncertainty is asked for") UncertainWorthAnswer uncertain,
        @Property("Where it would just pay; empty for the baseline itself.") List<BreakEvenAnswer> breakEven,
        @Property("What it sends down the drain.") DischargeAnswer discharge,
        @Property("Published lines of efficiency; empty where nothing softens.") List<EfficiencyLineAnswer> efficiencyLines) {
}
