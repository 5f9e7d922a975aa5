package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.SaltDischarge;
import dev.brinebook.payback.Way;
import dev.brinebook.resin.Salt;

@About("What a year of softening sends down the drain, to a sewer or to the ground.")
public record DischargeAnswer(
        @Property("Salt.") MassQuantity salt,
        @Property("Chloride in it.") MassQuantity chloride,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Chloride that it adds to the household's waste water, on the mean: the softened use and the"
                + " regeneration water together.", optional = "when no water is used")
        ConcentrationQuantity chlorideInWasteWater,
        @Property(value = "Salt that the baseline uses more; negative where it uses less.",
                optional = "for the baseline itself") MassQuantity saltSaved,
        @Property(value = "Chloride that it sends more down the drain, likewise.", optional = "for the baseline itself")
        MassQuantity chlorideSaved,
        @Property(value = "Regeneration water that it takes more, likewise.", optional = "for the baseline itself")
        VolumeQuantity waterSaved) {

    /** A year of {@code way} against one of the baseline, which may be the same. */
    static DischargeAnswer of(Comparison comparison, Way way, AnswerUnits units) {
        SaltDischarge discharge = discharge(comparison, way);
        SaltDischarge.Less less = discharge.lessThan(discharge(comparison, comparison.baseline()));
        boolean same = way == comparison.baseline();
        double household = comparison.duty().meanLitres() * Days.PER_YEAR;
        return new DischargeAnswer(units.mass(discharge.saltKilogramsPerYear()),
                units.mass(discharge.chlorideKilogramsPerYear()), units.volume(discharge.regenerationLitresPerYear()),
                household + discharge.regenerationLitresPerYear() > 0
                        ? units.concentration(discharge.addedChlorideMgPerL(household)) : null,
                same ? null : units.mass(less.saltKilogramsPerYear()),
                same ? null : units.mass(less.chlorideKilogramsPerYear()),
                same ? null : units.volume(less.regenerationLitresPerYear()));
    }

    private static SaltDischarge discharge(Comparison comparison, Way way) {
        Salt salt = comparison.setup(way).map(setup -> setup.softener().salt()).orElse(Salt.SODIUM_CHLORIDE);
        return SaltDischarge.of(comparison.use(way, Factors.AS_TOLD), salt);
    }
}
