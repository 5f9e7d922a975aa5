package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.DrawnYears;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.Totals;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("What a policy does in many drawn years of 365 days, the same for all policies.")
public record PolicyYears(
        @Property(value = "Years simulated.", min = SimulatedYears.MIN_YEARS, max = DrawnYears.MAX_YEARS, example = "500")
        Integer years,
        @Property("Regenerations of a year.") YearSpread regenerations,
        @Property("Salt of a year.") MassSpread salt,
        @Property("Regeneration water of a year.") VolumeSpread water,
        @Property("Days of a year on which the bed was exhausted.") YearSpread hardDays,
        @Property("Hard water of a year that passed because the bed was exhausted.") VolumeSpread hardWater,
        @Property("Hard water of a year that passed by the bed while an immediate regeneration ran.")
        VolumeSpread bypassedWater,
        @Property("Capacity of a year that was still there when it regenerated, and thrown away.")
        CapacitySpread capacityThrownAway,
        @Property(value = "Share of the years with a hard day.", min = 0, max = 100, unit = "%", example = "12.4")
        BigDecimal yearsWithHardDaysPercent) {

    static PolicyYears of(SimulatedYears years, AnswerUnits units) {
        return new PolicyYears(years.count(), YearSpread.of(years.spread(Totals::regenerations)),
                MassSpread.of(years.spread(Totals::saltGrams), units),
                VolumeSpread.of(years.spread(Totals::waterLitres), units), YearSpread.of(years.spread(Totals::hardDays)),
                VolumeSpread.of(years.spread(Totals::hardLitres), units),
                VolumeSpread.of(years.spread(Totals::bypassedLitres), units),
                CapacitySpread.of(years.spread(Totals::unusedGrams), units),
                Rounding.answer(100 * years.yearsWithHardDaysShare()));
    }

    static void explain(String pointer, Explanation explanation) {
        explanation.given(pointer + "/years");
        explanation.because(pointer, Message.of("drawn years, each with a level of use and a scatter of its own: a day is the"
                + " mean of its weekday and month times a gamma number of mean 1, somewhat like that of the day before, nothing on vacant"
                + " days; bed and controller go on from year to year"), "DAIAD");
        explanation.because(pointer, Message.of("the numbers come from Philox 4x32, by seed and year: the same in any Java"),
                "PHILOX");
        explanation.because(pointer, Message.of("percentiles between the years next to them"), "HYNDMAN-FAN");
    }
}
