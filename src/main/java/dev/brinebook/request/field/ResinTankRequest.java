// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.field.TankBottom;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.quantity.Exact;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.text.Message;

@SchemaDescription("The resin tank by tape and dip rod.")
@Alternatives(value = {"innerDiameter", "outerDiameter"}, required = true)
public record ResinTankRequest(
        @Property(value = "Inner diameter. Give this, or outerDiameter.", min = ResinTankRequest.MIN_DIAMETER_METRES,
                max = ResinTankRequest.MAX_DIAMETER_METRES, unit = "m") LengthQuantity innerDiameter,
        @Property(value = "Outer diameter or nominal size. The walls together are taken as 0.4 in.",
                min = ResinTankRequest.MIN_DIAMETER_METRES + ResinTankRequest.ASSUMED_WALLS_METRES,
                max = ResinTankRequest.MAX_DIAMETER_METRES, unit = "m") LengthQuantity outerDiameter,
        @Property(value = "Inside height, from the bottom to the rim.", required = true, min = 0.3, max = 2.5, unit = "m")
        LengthQuantity height,
        @Property(value = "Freeboard: from the rim down to the settled resin.", required = true, min = 0.02, max = 2.3, unit = "m")
        LengthQuantity freeboard,
        @Property(value = "Depth of the gravel below the resin, from the inner bottom to its top.",
                min = ResinTankRequest.LEAST_GRAVEL_METRES, max = 1, unit = "m", fallback = "none") LengthQuantity gravelDepth,
        @Property(value = "Shape of the bottom.", defaultCode = "elliptical", example = "\"flat\"") TankBottom bottom,
        @Property(value = "How far the diameter may be off either way.", min = ResinTankRequest.LEAST_METRES,
                max = ResinTankRequest.MOST_DIAMETER_METRES, unit = "m",
                fallback = "0.1 in of an inner diameter, 0.2 in of an outer one") LengthQuantity diameterPlusMinus,
        @Property(value = "How far height, freeboard and gravel may each be off either way.", min = ResinTankRequest.LEAST_METRES,
                max = ResinTankRequest.MOST_DEPTH_METRES, unit = "m", byDefault = 0.5, defaultUnit = "in") LengthQuantity depthPlusMinus)
        implements Checked {

    static final double MIN_DIAMETER_METRES = 0.15;
    static final double MAX_DIAMETER_METRES = 0.9;
    /** More than it may be off. */
    static final double LEAST_GRAVEL_METRES = 0.05;
    static final double LEAST_METRES = 1e-4;
    static final double MOST_DIAMETER_METRES = 0.015;
    static final double MOST_DEPTH_METRES = 0.05;
    /** Both walls of a tank of fibreglass. */
    public static final double ASSUMED_WALLS_METRES = 0.4 * Exact.INCH_METRES;
    private static final double LEAST_DEPTH_METRES = 0.2;

    /** The resin reaches above the dome, whatever the readings may be off. */
    @Override
    public void check(Violations at) {
        if (at.here() || !PlusMinus.isWhole(height) || !PlusMinus.isWhole(freeboard)
                || !PlusMinus.isWhole(innerDiameter) && !PlusMinus.isWhole(outerDiameter)) {
            return;
        }
        double dome = bottomOrDefault() == TankBottom.FLAT ? 0
                : bottomOrDefault().domeMetres(diameterMetres() + MOST_DIAMETER_METRES);
        double least = Math.max(LEAST_DEPTH_METRES, dome + 4 * depthHalfWidth());
        double depth = height.inBase() - freeboard.inBase();
        if (!(depth >= least)) {
            at.add("freeboard", Code.INCONSISTENT, Message.of("problem.field.resinReachesDome", Text.number(depth), Text.number(least)));
        } else if (PlusMinus.isWhole(gravelDepth) && !(depth - gravelDepth.inBase() >= LEAST_DEPTH_METRES)) {
            at.add("gravelDepth", Code.INCONSISTENT, Message.of("problem.field.resinAboveGravel",
                    Text.number(depth - gravelDepth.inBase()), Text.number(LEAST_DEPTH_METRES)));
        }
    }

    TankBottom bottomOrDefault() {
        return bottom == null ? TankBottom.ELLIPTICAL : bottom;
    }

    public double diameterMetres() {
        return innerDiameter != null ? innerDiameter.inBase() : outerDiameter.inBase() - ASSUMED_WALLS_METRES;
    }

    Instrument diameterBy() {
        return innerDiameter != null ? Instrument.TAPE_ACROSS_TANK : Instrument.NOMINAL_TANK_SIZE;
    }

    double depthHalfWidth() {
        return PlusMinus.isWhole(depthPlusMinus) ? depthPlusMinus.inBase() : Instrument.DIP_ROD.halfWidth(1);
    }
}
