package dev.brinebook.payback.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.household.Days;
import dev.brinebook.payback.SaltDischarge;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.ConcentrationQuantity;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Setup;

@About("What a year of softening sends down the drain, to a sewer or to the ground.")
public record DischargeAnswer(
        @Property("Salt.") MassQuantity salt,
        @Property("Chloride in it.") MassQuantity chloride,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Chloride that it adds to the household's waste water, on the mean: the softened use and the"
                + " regeneration water together.", optional = "when no water is used")
        ConcentrationQuantity chlorideInWasteWater) {

    static DischargeAnswer of(Setup setup, YearlyUse use, Duty duty, AnswerUnits units) {
        SaltDischarge discharge = SaltDischarge.of(use, setup == null ? Salt.SODIUM_CHLORIDE : setup.softener().salt());
        double household = duty.days().meanLitres() * Days.PER_YEAR;
        return new DischargeAnswer(units.mass(discharge.saltKilogramsPerYear()),
                units.mass(discharge.chlorideKilogramsPerYear()), units.volume(discharge.regenerationLitresPerYear()),
                household + discharge.regenerationLitresPerYear() > 0
                        ? units.concentration(discharge.addedChlorideMgPerL(household)) : null);
    }
}
