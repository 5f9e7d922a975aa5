package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.resin.MonotoneCubic;
import dev.brinebook.source.Table;
import java.util.List;

/**
 * Sodium chloride brine: how strong it gets, how heavy it is, and how much salt a litre of it holds.
 *
 * <p>A litre of water dissolves more salt than a litre of brine holds, 0.359 kg against 0.317 kg at 20 °C, since the
 * brine takes more room than its water. Setting a refill by the second number puts 13 % too much salt.
 *
 * <p>Not for potassium chloride, whose saturation changes far more with temperature.
 */
public final class Brine {

    /** Limits of a brine tank's temperature: the table of [SALT-INSTITUTE]. */
    public static final double MIN_TEMPERATURE_CELSIUS = 0;
    public static final double MAX_TEMPERATURE_CELSIUS = 37.8;
    /** Limits of a brine's strength: the table of [PORADNIK], carried on to saturation. */
    public static final double MIN_SALT_SHARE = 0.04;
    public static final double MAX_SALT_SHARE = 0.27;

    private static final MonotoneCubic SATURATION = curve("/regeneration/brine-saturation.csv");
    private static final MonotoneCubic DENSITY = curve("/regeneration/brine-density.csv");

    private Brine() {
    }

    /**
     * Salt in saturated brine as a share of its weight.
     *
     * <p>Interpolated between published points.
     * Validity: 0 to 37.8 °C; what stands over salt for hours, not what has just run through it.
     * Source: [SALT-INSTITUTE]; [CRC-NACL] agrees within 0.25 %.
     * Deviation: none.
     */
    public static double saturatedSaltShare(double temperatureCelsius) {
        return SATURATION.value(Guard.within(temperatureCelsius, MIN_TEMPERATURE_CELSIUS, MAX_TEMPERATURE_CELSIUS,
                "temperatureCelsius")) / 100;
    }

    /**
     * Salt that a kilogram of water dissolves.
     *
     * <pre>s = w / (1 − w)</pre>
     *
     * <p>s kg of salt per kg of water; w salt share of saturated brine.
     * Validity: as above; 0.359 at 20 °C, which is 2.99 lb per US gallon of water.
     * Source: [SALT-INSTITUTE]; [CRC-NACL] agrees within 0.25 %.
     * Deviation: none.
     */
    public static double saltKilogramsPerKilogramWater(double temperatureCelsius) {
        double share = saturatedSaltShare(temperatureCelsius);
        return share / (1 - share);
    }

    /**
     * Density of brine at 20 °C.
     *
     * <p>Interpolated between published points; beyond 26 % carried on to saturation with the last growth.
     * Validity: 4 to 27 % of salt by weight.
     * Source: [PORADNIK].
     * Deviation: taken for any temperature of the tank; brine changes by about 0.04 % per degree.
     */
    public static double densityKilogramsPerCubicMetre(double saltShare) {
        return DENSITY.value(100 * Guard.within(saltShare, MIN_SALT_SHARE, MAX_SALT_SHARE, "saltShare"));
    }

    /**
     * Salt in a litre of saturated brine.
     *
     * <pre>c = w ρ / 1000</pre>
     *
     * <p>c kg/L; w salt share; ρ density of the brine, kg/m³.
     * Validity: as above; 0.317 at 20 °C, which is 2.65 lb per US gallon of brine.
     * Source: [SALT-INSTITUTE]; [PORADNIK].
     * Deviation: none.
     */
    public static double saltKilogramsPerLitreBrine(double temperatureCelsius) {
        double share = saturatedSaltShare(temperatureCelsius);
        return share * densityKilogramsPerCubicMetre(share) / 1000;
    }

    private static MonotoneCubic curve(String resource) {
        List<String[]> rows = Table.read(resource, ',', 2);
        return MonotoneCubic.through(rows.stream().mapToDouble(row -> Double.parseDouble(row[0])).toArray(),
                rows.stream().mapToDouble(row -> Double.parseDouble(row[1])).toArray());
    }
}
