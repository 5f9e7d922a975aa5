// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.resin.Salt;
import java.util.Objects;

/**
 * What is known of a softener without reading it.
 *
 * @param tankBottom shape of the bottom of the resin tank
 * @param brineTank plan of the brine tank
 * @param salt the salt in it
 */
public record FieldSetup(TankBottom tankBottom, BrineTankShape brineTank, Salt salt) {

    public FieldSetup {
        Objects.requireNonNull(tankBottom, "tankBottom");
        Objects.requireNonNull(brineTank, "brineTank");
        Objects.requireNonNull(salt, "salt");
    }
}
