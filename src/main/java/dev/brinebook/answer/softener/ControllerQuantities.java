// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ReserveStep;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Settings as the controller takes them.
 *
 * @param duty the demand on the softener, and the terms of its controller
 * @param units the units of the answer, for what the controller has no unit of its own for
 */
public record ControllerQuantities(DesignConditions duty, AnswerUnits units) {

    private static final MathContext FOUR_DIGITS_DOWN = new MathContext(4, RoundingMode.DOWN);

    /** The hardness in the controller's unit. */
    public HardnessQuantity hardness(double mgPerL) {
        HardnessUnit unit = duty.controller().hardness().unit();
        return new HardnessQuantity(Rounding.answer(unit.fromBase(mgPerL)), unit);
    }

    /** The capacity in the controller's unit. */
    public CapacityQuantity capacity(double grams) {
        return new CapacityQuantity(Rounding.answer(duty.controller().capacityUnit().fromBase(grams)),
                duty.controller().capacityUnit());
    }

    /** A volume in the controller's unit. */
    public VolumeQuantity volume(double litres) {
        return new VolumeQuantity(Rounding.answer(duty.controller().volumeUnit().fromBase(litres)), duty.controller().volumeUnit());
    }

    /** Water between regenerations, which no controller takes exactly: rounded down, so that it does not regenerate too late. */
    public static Message meterInWords(VolumeQuantity volume) {
        return Text.exact(new VolumeQuantity(volume.value().round(FOUR_DIGITS_DOWN), volume.unit()));
    }

    /** Salt of a regeneration, in the controller's unit where it takes salt by mass. */
    public MassQuantity salt(double grams) {
        return duty.controller().saltStep() instanceof SaltStep.Mass mass ? inUnit(grams, mass.unit()) : units.mass(grams / 1000);
    }

    private static MassQuantity inUnit(double grams, MassUnit unit) {
        return new MassQuantity(Rounding.answer(unit.fromBase(grams / 1000)), unit);
    }

    /** A reserve in percent of the meter volume, where the controller takes it so. */
    public Optional<BigDecimal> reservePercent(double reserveLitres, double meterLitres) {
        return duty.controller().reserveStep() instanceof ReserveStep.Percent
                ? Optional.of(Rounding.answer(100 * reserveLitres / meterLitres)) : Optional.empty();
    }

    /** A reserve in days of mean use, where the controller takes it so and anything is used. */
    public Optional<BigDecimal> reserveDays(double reserveLitres) {
        return duty.controller().reserveStep() instanceof ReserveStep.MeanDays && duty.meanLitres() > 0
                ? Optional.of(Rounding.answer(reserveLitres / duty.meanLitres())) : Optional.empty();
    }

    /** A reserve as it is set: as a volume, which may be all that the meter counts, in percent of the meter volume, or in days. */
    public Message reserveInWords(double reserveLitres, double meterLitres) {
        return reservePercent(reserveLitres, meterLitres).map(percent -> Message.of("pattern.percent", percent))
                .or(() -> reserveDays(reserveLitres).map(days -> Message.of("controllerQuantities.days", days)))
                .orElseGet(() -> reserveLitres < meterLitres ? Text.of(volume(reserveLitres)) : meterInWords(volume(meterLitres)));
    }

    /** Minutes of a refill to a tenth; a controller that takes the salt by minutes gets the steps that the salt was chosen in. */
    public BigDecimal refillMinutes(double minutes) {
        return Rounding.answer(duty.controller().saltStep() instanceof SaltStep.RefillMinutes refill
                ? refill.stepMinutes() * Math.round(minutes / refill.stepMinutes()) : Math.round(minutes * 10) / 10.0);
    }

    /** A salt dose as it is set: as a dose, as salt of a regeneration, or as minutes of refill. */
    public Message saltInWords(double gramsPerLitre, Softener softener) {
        if (duty.controller().saltStep() instanceof SaltStep.Mass mass) {
            MassQuantity salt = inUnit(softener.saltGrams(gramsPerLitre), mass.unit());
            return mass.canBeSet(salt.value().doubleValue()) ? Text.setting(salt) : Text.rounded(salt);
        }
        if (duty.controller().saltStep() instanceof SaltStep.RefillMinutes refill) {
            return Message.of("controllerQuantities.minutes", Rounding.answer(refill.stepMinutes()
                    * gramsPerLitre / refill.gramsPerLitre(softener, duty.water().temperatureCelsius())));
        }
        return Text.of(units.saltDose(gramsPerLitre));
    }
}
