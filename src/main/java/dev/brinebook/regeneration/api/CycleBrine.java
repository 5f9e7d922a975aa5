package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.quantity.api.TemperatureQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.resin.Salt;
import java.math.BigDecimal;

@About("The brine: what is drawn from the tank and how it goes through the bed.")
public record CycleBrine(
        @Property(value = "The salt.", example = "\"sodiumChloride\"") Salt salt,
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @Property("Salt of one regeneration.") MassQuantity saltPerRegeneration,
        @Property("Temperature of the brine tank.") TemperatureQuantity tankTemperature,
        @Property(value = "Strength of the saturated brine in the tank, by weight.", min = 0, max = 100, example = "26.4",
                unit = "%") BigDecimal saturatedPercent,
        @Property("Saturated brine that is drawn from the tank.") VolumeQuantity saturatedVolume,
        @Property(value = "Strength behind the injector, by weight.", min = 0, max = 100, example = "10", unit = "%")
        BigDecimal dilutedPercent,
        @Property("What the injector makes of it.") VolumeQuantity dilutedVolume,
        @Property(value = "Minutes that the brine is drawn, in which it is in contact with the resin.", example = "36",
                unit = "minutes") BigDecimal contactMinutes,
        @Property(value = "Minutes of the slow rinse after it.", example = "24", unit = "minutes")
        BigDecimal slowRinseMinutes,
        @Property(value = "Bed volumes an hour at which brine and slow rinse pass the bed; 2 to 5 are usual.", min = 0,
                example = "2.5") BigDecimal bedVolumesPerHour) {

    static CycleBrine of(CycleDesign design, Cycle cycle, AnswerUnits units) {
        Cycle.BrineDraw brine = cycle.brine();
        double saturated = Brine.saturatedSaltShare(design.salt(), design.brineTankTemperatureCelsius());
        return new CycleBrine(design.salt(), units.saltDose(brine.saltGrams() / design.bed().resinLitres()),
                units.mass(brine.saltGrams() / 1000), units.temperature(design.brineTankTemperatureCelsius()),
                Rounding.answer(100 * saturated), units.volume(brine.saturatedLitres()),
                Rounding.answer(100 * CycleDesign.ASSUMED_DILUTED_SALT_SHARE), units.volume(brine.dilutedLitres()),
                Rounding.answer(brine.drawMinutes()), Rounding.answer(brine.slowRinseMinutes()),
                Rounding.answer(brine.bedVolumesPerHour()));
    }

    static void explain(Salt salt, Explanation explanation) {
        explanation.because("/brine/saturatedPercent", "saturation at the temperature of the brine tank",
                Brine.sourceKey(salt));
        explanation.because("/brine/saturatedVolume", "salt over the salt that a litre of saturated brine holds",
                densitySource(salt));
        explanation.because("/brine/dilutedVolume", "salt over 10 % by weight, over the density of that brine",
                densitySource(salt));
        explanation.because("/brine/contactMinutes", "diluted brine over the brine flow; with the slow rinse 60 minutes",
                "CP-CYCLE");
    }

    private static String densitySource(Salt salt) {
        return salt == Salt.SODIUM_CHLORIDE ? "PORADNIK" : "CRC-KCL";
    }
}
