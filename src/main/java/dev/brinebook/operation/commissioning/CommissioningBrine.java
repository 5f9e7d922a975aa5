// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.commissioning.CommissioningBands;
import dev.brinebook.commissioning.FirstRegeneration;
import dev.brinebook.commissioning.PassBand;
import dev.brinebook.commissioning.ResinSanitising;
import dev.brinebook.field.BrineTankShape;
import dev.brinebook.field.SaltDissolving;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("The brine of the first regeneration: its salt, the wait until it is saturated, and bleach to sanitise the resin.")
public record CommissioningBrine(
        @Basis(formula = "formula.commissioning.saltOfRefill", source = "SALT-INSTITUTE")
        @Property("Salt that the refill dissolves.") MassQuantity salt,
        @Basis(formula = "formula.commissioning.passBand", source = "GUM")
        @Property("Least salt that sound equipment gives.") MassQuantity saltFrom,
        @Basis(formula = "formula.commissioning.passBand", source = "GUM")
        @Property("Most salt that it gives.") MassQuantity saltTo,
        @Basis(formula = "formula.commissioning.brineMade", source = "SALT-INSTITUTE")
        @Property("Brine that the refill makes.") VolumeQuantity brine,
        @Basis(formula = "formula.field.wait", source = "CP-FIELD-TESTS")
        @Property(value = "Wait before the first draw.", min = 0, unit = "minutes", example = "120") BigDecimal waitMinutes,
        @Basis(formula = "formula.field.dissolving", source = "OWN-ASSUMPTION")
        @Property(value = "Minutes to 99 % of saturation if the salt dissolves slowly. Salt must stand above the water.", min = 0,
                unit = "minutes", example = "53") BigDecimal slowMinutes,
        @Basis(formula = "formula.commissioning.bleach", source = "CP-RESIN-SANITISING")
        @Property(value = "Plain bleach for the brine well, if the resin is to be sanitised.", min = 0, unit = "mL", example = "53")
        BigDecimal bleachMillilitres,
        @Basis(formula = "formula.commissioning.chlorine", source = "CP-RESIN-SANITISING")
        @Property("Chlorine in the voids of the resin.") ConcentrationQuantity chlorineInResin,
        @Basis(formula = "formula.commissioning.contact", source = "CP-RESIN-SANITISING")
        @Property(value = "Minutes of contact.", min = 0, unit = "minutes", example = "60") BigDecimal contactMinutes) {

    static CommissioningBrine of(FirstRegeneration regeneration, CommissioningBands bands, double bleachPercent, AnswerUnits units) {
        PassBand salt = bands.salt();
        double resin = regeneration.softener().bed().resinLitres();
        double bleach = ResinSanitising.bleachLitres(resin, bleachPercent);
        double voids = regeneration.brineTank().map(FirstRegeneration.BrineTank::voidShare)
                .orElse(BrineTankShape.ASSUMED_OTHER_VOID_SHARE);
        return new CommissioningBrine(units.mass(salt.expected()), units.mass(salt.lowPass()), units.mass(salt.highPass()),
                units.volume(regeneration.brineLitres()), Rounding.answer(SaltDissolving.WAIT_MINUTES),
                Rounding.answer(SaltDissolving.minutes(SaltDissolving.ASSUMED_SLOW_METRES_PER_SECOND, voids,
                        SaltDissolving.ASSUMED_PIECE_METRES)), Rounding.answer(1000 * bleach),
                units.concentration(ResinSanitising.chlorineMgPerL(bleach, bleachPercent,
                        regeneration.softener().bed().bead().voidShare() * resin)), Rounding.answer(ResinSanitising.CONTACT_MINUTES));
    }
}
