// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.MeteringWorth;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("Saving of a meter over a clock on the same bed. Both have the best settings that meet the same service standard. "
        + "The saving is smaller over a clock that is reset every season, and larger over one that is set once and left. What the "
        + "existing clock wastes by its present settings is not included.")
public record MeteringWorthAnswer(
        @Property(value = "The range in one sentence.", example = "\"A meter saves 14 to 36 % of the salt of a clock that is set"
                + " right.\"") Message sentence,
        @Property(value = "Share of the salt that the meter saves over a clock reset every season. Negative if the meter uses more.",
                max = 100, unit = "%", example = "14") BigDecimal saltSavedPercentOverSeasonalClock,
        @Property(value = "The same over a clock that is set once and left.", max = 100, unit = "%", example = "36")
        BigDecimal saltSavedPercentOverClockSetOnce,
        @Property("Salt and water cost per year that the meter saves over a clock reset every season. Negative if the meter costs more.")
        Money moneySavedOverSeasonalClock,
        @Property("The same over a clock that is set once and left.") Money moneySavedOverClockSetOnce,
        @Property("The clock reset every season, in a mean year.") ControlYear seasonalClock,
        @Property("The clock set once and left.") ControlYear clockSetOnce,
        @Property(value = "Days between regenerations of the clock set once.", min = 1, unit = "days",
                example = "4") Integer clockSetOnceEveryDays,
        @Property("Salt dose of the clock set once.") SaltDoseQuantity clockSetOnceSaltDose,
        @Property("The meter.") ControlYear meter) {

    @SchemaDescription("Consumption of a control per year.")
    public record ControlYear(
            @Property(value = "Regenerations.", min = 0, example = "91") BigDecimal regenerations,
            @Property("Salt.") MassQuantity salt,
            @Property("Regeneration water.") VolumeQuantity water,
            @Property(value = "Expected hard days.", min = 0, unit = "days", example = "0.8") BigDecimal hardDays) {

        static ControlYear of(MeteringWorth.Control control, AnswerUnits units) {
            return new ControlYear(Rounding.answer(control.regenerations()), units.mass(control.saltGrams() / 1000),
                    units.volume(control.waterLitres()), Rounding.toThousandth(control.hardDays()));
        }
    }

    /** The worth of metering a softener. */
    public static MeteringWorthAnswer of(DoseChoice.Option meter, DesignConditions duty, RunningCost cost, Currency currency,
            AnswerUnits units) {
        return of(MeteringWorth.of(meter, duty, cost), duty, currency, units);
    }

    /** The same where it was worked out already. */
    public static MeteringWorthAnswer of(MeteringWorth worth, DesignConditions duty, Currency currency, AnswerUnits units) {
        double seasonal = worth.saltSavedShare(worth.everySeason());
        double once = worth.saltSavedShare(worth.once());
        return new MeteringWorthAnswer(sentence(worth, duty, seasonal, once), Rounding.answer(100 * seasonal), Rounding.answer(100 * once),
                Money.of(worth.everySeason().cost() - worth.meter().cost(), currency),
                Money.of(worth.once().cost() - worth.meter().cost(), currency), ControlYear.of(worth.everySeason(), units),
                ControlYear.of(worth.once(), units), worth.onceSet().clock().days(),
                units.saltDose(worth.onceSet().saltDoseGramsPerLitre()), ControlYear.of(worth.meter(), units));
    }

    private static Message sentence(MeteringWorth worth, DesignConditions duty, double seasonal, double once) {
        BigDecimal low = Text.number(Math.round(100 * Math.min(seasonal, once)));
        BigDecimal high = Text.number(Math.round(100 * Math.max(seasonal, once)));
        if (!worth.onceSet().keepsStandard()) {
            return Message.of("meteringWorth.noClockMeetsService");
        }
        if (high.signum() <= 0) {
            return Message.of("meteringWorth.meterSavesNoSalt");
        }
        return low.compareTo(high) == 0 ? Message.of("meteringWorth.meterSavesSaltClock", high)
                : duty.useIsHardlyKnown()
                ? Message.of("meteringWorth.meterSavesSaltClockSet", low, high)
                : Message.of("meteringWorth.meterSavesSaltClockSetRight", low, high);
    }
}
