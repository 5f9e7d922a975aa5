// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Message;

@SchemaDescription("How far what was measured of a softener may be off either way, with 95 %: half of what lies between "
        + "low and high in reduceFieldMeasurements, which fills it in. That of the hardness is in water, that of the use in household.")
public record SoftenerUncertaintyRequest(
        @Property(value = "Of resinVolume, at most half of it.", min = 0, aboveMin = true,
                max = BedUncertainty.MAX_SHARE * Softener.MAX_RESIN_LITRES, unit = "L", fallback = "none: taken as exact")
        VolumeQuantity resinVolume,
        @Property(value = "Of the salt per regeneration, at most half of it.", min = 0, aboveMin = true,
                max = BedUncertainty.MAX_SHARE * SoftenerRequest.MAX_SALT_KILOGRAMS, unit = "kg", fallback = "none: taken as exact")
        MassQuantity saltPerRegeneration) {

    /** Reports an uncertainty of what is not given, too small or too large for it, or of more resin than the tank has room for. */
    void checkAgainst(SoftenerRequest softener, Violations at) {
        require(resinVolume, softener.resinVolume() != null, "resinVolume", at);
        require(saltPerRegeneration, softener.doseRead(), "saltPerRegeneration", at);
        if (at.here()) {
            return;
        }
        PlusMinus.check(resinVolume, softener.resinVolume(), BedUncertainty.MAX_SHARE, "resinVolume", at);
        PlusMinus.check(saltPerRegeneration, softener.saltKilograms(), BedUncertainty.MAX_SHARE, "saltPerRegeneration", at);
        if (resinVolume != null && !at.here()) {
            checkRoom(softener, at);
        }
    }

    private static void require(Quantity<?> uncertainty, boolean given, String name, Violations at) {
        if (uncertainty != null && !given) {
            at.add(name, Code.INCONSISTENT, Message.of("problem.softener.uncertaintyOfGiven"));
        }
    }

    /** At both ends the bed is one that is calculated with, in its tank. */
    private void checkRoom(SoftenerRequest softener, Violations at) {
        double share = toDomain(softener).resinShare();
        double least = (1 - share) * softener.resinLitres();
        double most = (1 + share) * softener.resinLitres();
        if (least < ResinBed.MIN_RESIN_LITRES
                || new ResinBed(most, softener.diameterMetres()).depthMetres() > softener.heightMetres()) {
            at.add("resinVolume", Code.INCONSISTENT, Message.of("problem.softener.uncertaintyWithinTank", Text.number(least),
                    Text.number(most), Text.number(ResinBed.MIN_RESIN_LITRES)));
        }
    }

    /** Shares of a softener without violations; the last digit of a conversion of units goes beyond no limit. */
    BedUncertainty toDomain(SoftenerRequest softener) {
        return new BedUncertainty(resinVolume == null ? 0
                : Math.min(BedUncertainty.MAX_SHARE, resinVolume.inBase() / softener.resinLitres()), saltPerRegeneration == null ? 0
                : Math.min(BedUncertainty.MAX_SHARE, saltPerRegeneration.inBase() / softener.saltKilograms()));
    }
}
