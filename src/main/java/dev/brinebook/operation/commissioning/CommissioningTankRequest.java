// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.commissioning.FirstRegeneration.BrineTank;
import dev.brinebook.field.BrineTankShape;
import java.math.BigDecimal;

@SchemaDescription("The brine tank, for the fall of its level.")
public record CommissioningTankRequest(
        @Property(value = "Shape in plan.", defaultCode = "round", example = "\"round\"") BrineTankShape shape,
        @Property(value = "Inner diameter, or inner side of a square tank, at the height of the brine.", required = true,
                min = CommissioningTankRequest.MIN_METRES, max = CommissioningTankRequest.MAX_METRES, unit = "m") LengthQuantity width,
        @Property(value = "Voids between the salt as a share.", min = CommissioningTankRequest.MIN_VOIDS,
                max = CommissioningTankRequest.MAX_VOIDS, example = "0.42", byDefault = BrineTankShape.ASSUMED_OTHER_VOID_SHARE)
        BigDecimal voidShare) {

    static final double MIN_METRES = 0.15;
    static final double MAX_METRES = 1.5;
    static final double MIN_VOIDS = 0.25;
    static final double MAX_VOIDS = 0.85;

    BrineTank toDomain() {
        return new BrineTank(shape == null ? BrineTankShape.ROUND : shape, width.inBase(),
                voidShare == null ? BrineTankShape.ASSUMED_OTHER_VOID_SHARE : voidShare.doubleValue());
    }
}
