// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.resin.MonotoneCubic;
import dev.brinebook.resin.Salt;
import dev.brinebook.source.Table;
import dev.brinebook.water.WaterProperties;
import java.util.List;

/**
 * The brine of a salt: how strong it gets, how heavy it is, and how much salt a litre of it holds.
 *
 * <p>A litre of water dissolves more salt than a litre of brine holds, 0.359 kg against 0.317 kg of sodium chloride at
 * 20 °C, since the brine takes more room than its water. Setting a refill by the second number puts 13 % too much salt.
 *
 * <p>The saturation of sodium chloride hardly changes with temperature. That of potassium chloride does: water at 5 °C
 * dissolves a seventh less of it than at 20 °C, so the same refill gives less salt in winter.
 */
public final class Brine {

    /** Limits of a brine tank's temperature: the table of [SALT-INSTITUTE]; that of [CRC-KCL] goes on to 40 °C. */
    public static final double MIN_TEMPERATURE_CELSIUS = 0;
    public static final double MAX_TEMPERATURE_CELSIUS = 37.8;
    /** Least strength of a brine: where the tables of densities begin. */
    public static final double MIN_SALT_SHARE = 0.04;

    private static final double TABLE_CELSIUS = 20;
    private static final Brine SODIUM_CHLORIDE = new Brine("sodium-chloride");
    private static final Brine POTASSIUM_CHLORIDE = new Brine("potassium-chloride");

    private final MonotoneCubic saturation;
    private final MonotoneCubic density;

    private Brine(String salt) {
        saturation = curve("/regeneration/brine-saturation-" + salt + ".csv");
        density = curve("/regeneration/brine-density-" + salt + ".csv");
    }

    private static Brine of(Salt salt) {
        return switch (salt) {
            case SODIUM_CHLORIDE -> SODIUM_CHLORIDE;
            case POTASSIUM_CHLORIDE -> POTASSIUM_CHLORIDE;
        };
    }

    /** Key of the source of a salt's saturation. */
    public static String sourceKey(Salt salt) {
        return salt == Salt.SODIUM_CHLORIDE ? "SALT-INSTITUTE" : "CRC-KCL";
    }

    /** Highest strength that a salt's table of densities covers, past saturation at any temperature allowed. */
    public static double maxSaltShare(Salt salt) {
        return of(salt).density.max() / 100;
    }

    /**
     * Salt in saturated brine as a share of its weight.
     *
     * <p>Interpolated between published points.
     * Validity: 0 to 37.8 °C; what stands over salt for hours, not what has just run through it.
     * Source: [SALT-INSTITUTE] for sodium chloride, [CRC-NACL] agrees within 0.25 %; [CRC-KCL] for potassium chloride.
     * Deviation: none. Older handbooks give potassium chloride up to 1 % more, 34.2 g per 100 g of water at 20 °C.
     */
    public static double saturatedSaltShare(Salt salt, double temperatureCelsius) {
        return of(salt).saturation.value(Guard.within(temperatureCelsius, MIN_TEMPERATURE_CELSIUS,
                MAX_TEMPERATURE_CELSIUS, "temperatureCelsius")) / 100;
    }

    /**
     * Salt that a kilogram of water dissolves.
     *
     * <pre>s = w / (1 − w)</pre>
     *
     * <p>s kg of salt per kg of water; w salt share of saturated brine.
     * Validity: as above; 0.359 at 20 °C for sodium chloride, which is 2.99 lb per US gallon of water; 0.340 for
     * potassium chloride.
     * Source: as above.
     * Deviation: as above.
     */
    public static double saltKilogramsPerKilogramWater(Salt salt, double temperatureCelsius) {
        double share = saturatedSaltShare(salt, temperatureCelsius);
        return share / (1 - share);
    }

    /**
     * Density of brine at 20 °C.
     *
     * <p>Interpolated between published points; beyond the last, 26 % of sodium or 24 % of potassium chloride, carried
     * on to saturation with the last growth.
     * Validity: from 4 % of salt by weight to {@link #maxSaltShare}.
     * Source: [PORADNIK] for sodium chloride; [CRC-KCL] for potassium chloride.
     * Deviation: taken for any temperature of the tank; brine changes by about 0.04 % per degree.
     */
    public static double densityKilogramsPerCubicMetre(Salt salt, double saltShare) {
        return of(salt).density.value(
                100 * Guard.within(saltShare, MIN_SALT_SHARE, maxSaltShare(salt), "saltShare"));
    }

    /**
     * Density of brine at 20 °C, of any strength below too.
     *
     * <p>The same; from its first published point straight on to that of water.
     * Validity: from water to {@link #maxSaltShare}.
     * Source: as above; [KELL-1975].
     * Deviation: as above; the curve is straight within 0.02 % there.
     */
    public static double weakDensityKilogramsPerCubicMetre(Salt salt, double saltShare) {
        if (saltShare >= MIN_SALT_SHARE) {
            return densityKilogramsPerCubicMetre(salt, saltShare);
        }
        double water = WaterProperties.densityKilogramsPerCubicMetre(TABLE_CELSIUS);
        return water + (densityKilogramsPerCubicMetre(salt, MIN_SALT_SHARE) - water)
                * Guard.within(saltShare, 0, MIN_SALT_SHARE, "saltShare") / MIN_SALT_SHARE;
    }

    /**
     * Salt in a litre of saturated brine.
     *
     * <pre>c = w ρ / 1000</pre>
     *
     * <p>c kg/L; w salt share; ρ density of the brine, kg/m³.
     * Validity: as above; 0.317 at 20 °C for sodium chloride, which is 2.65 lb per US gallon of brine; 0.298 for
     * potassium chloride.
     * Source: as above, for strength and density.
     * Deviation: as above.
     */
    public static double saltKilogramsPerLitreBrine(Salt salt, double temperatureCelsius) {
        double share = saturatedSaltShare(salt, temperatureCelsius);
        return share * densityKilogramsPerCubicMetre(salt, share) / 1000;
    }

    private static MonotoneCubic curve(String resource) {
        List<String[]> rows = Table.read(resource, ',', 2);
        return MonotoneCubic.through(rows.stream().mapToDouble(row -> Double.parseDouble(row[0])).toArray(),
                rows.stream().mapToDouble(row -> Double.parseDouble(row[1])).toArray());
    }
}
