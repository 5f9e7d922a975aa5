// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.payback.AlternativePlan;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Factors;
import dev.brinebook.payback.SaltDischarge;
import dev.brinebook.resin.Salt;

@SchemaDescription("Discharge of a year of softening, to a sewer or to the ground.")
public record DischargeAnswer(
        @Property("Salt.") MassQuantity salt,
        @Property("Chloride in the discharge.") MassQuantity chloride,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Mean chloride concentration added to the waste water of the household: "
                + "softened use plus regeneration water.", optional = "when no water is used")
        ConcentrationQuantity chlorideInWasteWater,
        @Property(value = "Salt saved compared with the baseline. Negative if the option uses more.",
                optional = "for the baseline itself") MassQuantity saltSaved,
        @Property(value = "Chloride discharge saved compared with the baseline. Negative if the "
                + "option discharges more.", optional = "for the baseline itself")
        MassQuantity chlorideSaved,
        @Property(value = "Regeneration water saved compared with the baseline. Negative if the "
                + "option uses more.", optional = "for the baseline itself")
        VolumeQuantity waterSaved) {

    /** A year of {@code way} compared with one of the baseline, which may be the same. */
    static DischargeAnswer of(Comparison comparison, AlternativePlan way, AnswerUnits units) {
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

    private static SaltDischarge discharge(Comparison comparison, AlternativePlan way) {
        Salt salt = comparison.setup(way).map(setup -> setup.softener().salt()).orElse(Salt.SODIUM_CHLORIDE);
        return SaltDischarge.of(comparison.use(way, Factors.AS_GIVEN), salt);
    }
}
