// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.caution.Caution;
import java.util.EnumSet;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A water of which a part passes by the softener: what is left in it and what it gains.
 *
 * @param raw the raw water as tested
 * @param hardness its hardness, once iron and manganese count
 * @param blend the bypass
 * @param potassiumSalt whether the softener is regenerated with potassium chloride
 */
public record BlendedWater(WaterAnalysis raw, CompensatedHardness hardness, Blend blend, boolean potassiumSalt) {

    public BlendedWater {
        Objects.requireNonNull(raw, "raw");
        Objects.requireNonNull(hardness, "hardness");
        Objects.requireNonNull(blend, "blend");
    }

    /** Hardness that a litre of mixed water loads on the resin, iron and manganese at their equivalents, mg/L as CaCO3. */
    public double loadMgPerL() {
        return blend.resinShare() * fullLoadMgPerL();
    }

    /** The same when all the water passes the resin. */
    public double fullLoadMgPerL() {
        return hardness.realMgPerL() - blend.leakageMgPerL();
    }

    /** What softening adds to the mixed water. */
    public SoftenedWater softened() {
        return SoftenedWater.ofRemoved(loadMgPerL(), raw.sodiumMgPerL(), potassiumSalt);
    }

    /** What it adds when all the water passes the resin. */
    public SoftenedWater fullySoftened() {
        return SoftenedWater.ofRemoved(fullLoadMgPerL(), raw.sodiumMgPerL(), potassiumSalt);
    }

    /** Iron left, mg/L: all in the bypass; in the other share none if it is dissolved, otherwise all. None if not tested. */
    public OptionalDouble ironMgPerL() {
        boolean exchanged = raw.ironForm() == WaterAnalysis.IronForm.DISSOLVED;
        return left(raw.ironMgPerL(), exchanged);
    }

    /** Manganese left, mg/L: all in the bypass, none in the other share. */
    public OptionalDouble manganeseMgPerL() {
        return left(raw.manganeseMgPerL(), true);
    }

    /** Cautions for the people who use it, beside those of the raw water. */
    public Set<Caution> cautions() {
        Set<Caution> cautions = EnumSet.copyOf(softened().cautions());
        if (blend.residualMgPerL() > 0) {
            cautions.add(Caution.BLEND_PARTLY_HARD);
        }
        if (ironMgPerL().orElse(0) > WaterCautions.IRON_STAINS_MG_PER_L
                || manganeseMgPerL().orElse(0) > WaterCautions.MANGANESE_STAINS_MG_PER_L) {
            cautions.add(Caution.BLEND_STAINS);
        }
        return cautions;
    }

    private OptionalDouble left(OptionalDouble tested, boolean exchanged) {
        return tested.isEmpty() ? tested
                : OptionalDouble.of(blend.mixed(tested.getAsDouble(), exchanged ? 0 : tested.getAsDouble()));
    }
}
