// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.field.BrineTankShape;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("The brine tank, and the level of its brine before and after a brine draw.")
public record BrineTankRequest(
        @Property(value = "Shape in plan.", defaultCode = "round", example = "\"square\"") BrineTankShape shape,
        @Property(value = "Inner diameter, or inner side of a square tank, at the height of the brine.", required = true, min = 0.15,
                max = 1.5, unit = "m") LengthQuantity width,
        @Property(value = "Width of the brine well, a round pipe without salt: at most half of the width of the tank.", min = 0.05,
                max = 0.5, unit = "m", fallback = "none") LengthQuantity wellWidth,
        @Property(value = "Level of the brine before the draw.", required = true, min = 0, max = 2, unit = "m") LengthQuantity levelBefore,
        @Property(value = "Level after the draw, below the level before.", required = true, min = 0, max = 2, unit = "m")
        LengthQuantity levelAfter,
        @Property(value = "The salt: rock salt, or pellets and solar crystals.", defaultCode = "pellets", example = "\"rockSalt\"")
        SaltForm saltForm,
        @Property(value = "Voids between the salt as a share, if measured by topping up a bucket of salt with brine.", min = 0.25,
                max = 0.85, example = "0.42", fallback = "0.41 of rock salt, 0.45 of others") BigDecimal voidShare,
        @Property(value = "How far that share may be off either way.", min = 0.001, max = 0.15, example = "0.04",
                fallback = "0.045 of rock salt, 0.07 of others") BigDecimal voidSharePlusMinus,
        @Property(value = "How far width and levels may each be off either way.", min = ResinTankRequest.LEAST_METRES, max = 0.015,
                unit = "m", byDefault = 0.25, defaultUnit = "in") LengthQuantity levelPlusMinus) implements Checked {

    /** Kinds of salt by their voids. */
    public enum SaltForm {
        ROCK_SALT(BrineTankShape.ROCK_SALT_VOID_SHARE, Instrument.VOIDS_OF_ROCK_SALT),
        PELLETS(BrineTankShape.ASSUMED_OTHER_VOID_SHARE, Instrument.VOIDS_OF_OTHER_SALT);

        private final double voids;
        private final Instrument voidsBy;

        SaltForm(double voids, Instrument voidsBy) {
            this.voids = voids;
            this.voidsBy = voidsBy;
        }

        public double voidShare() {
            return voids;
        }

        Instrument voidsBy() {
            return voidsBy;
        }
    }

    @Override
    public void check(Violations at) {
        if (PlusMinus.isWhole(levelBefore) && PlusMinus.isWhole(levelAfter) && !at.here()
                && !(levelAfter.inBase() < levelBefore.inBase())) {
            at.add("levelAfter", Code.INCONSISTENT, Message.of("problem.field.levelFalls"));
        }
        if (PlusMinus.isWhole(wellWidth) && PlusMinus.isWhole(width) && !at.here() && !(wellWidth.inBase() <= width.inBase() / 2)) {
            at.add("wellWidth", Code.INCONSISTENT, Message.of("problem.field.wellInTank"));
        }
    }

    BrineTankShape shapeOrDefault() {
        return shape == null ? BrineTankShape.ROUND : shape;
    }
}
