// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import dev.brinebook.resin.TotalCapacity;
import dev.brinebook.source.Table;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A mineral tank of the sizes that the trade has, with the resin it is sold with.
 *
 * <p>Source: [CP-TANKS].
 */
public record StandardTank(double diameterMetres, double heightMetres, double resinLitres) {

    private static final List<StandardTank> ALL = Table.read("/softener/standard-tanks.csv", ',', 3).stream()
            .map(row -> new StandardTank(Double.parseDouble(row[0]) * Exact.INCH_METRES,
                    Double.parseDouble(row[1]) * Exact.INCH_METRES,
                    Double.parseDouble(row[2]) * Exact.CUBIC_FOOT_LITRES))
            .toList();
    /** Slack for a resin volume that was converted from another unit, or from grains. */
    private static final double ROUNDING = 1e-6;
    /** How far a tank may be off a standard size and still be it: sizes are nominal, and tanks are measured by tape. */
    private static final double ASSUMED_DIAMETER_SLACK_METRES = 0.5 * Exact.INCH_METRES;
    private static final double ASSUMED_HEIGHT_SLACK_METRES = Exact.INCH_METRES;

    public StandardTank {
        Guard.positive(diameterMetres, "diameterMetres");
        Guard.positive(heightMetres, "heightMetres");
        Guard.positive(resinLitres, "resinLitres");
    }

    /** All sizes, smallest first. */
    public static List<StandardTank> all() {
        return ALL;
    }

    /**
     * Resin that usually goes with a capacity on a nameplate.
     *
     * <pre>V = v where 30 v ≤ C ≤ 32 v;  linear in C between;  C / 30 below the least v, C / 32 above the largest</pre>
     *
     * <p>V litres of resin, v that of each standard tank; C nameplate capacity, 30 and 32 kgr/ft³ in its unit.
     * Validity: nameplates that state the capacity at the full dose of 15 lb/ft³.
     * Source: [CP-NAMEPLATE] 24, 32, 48, 64 kgr go with 0.75, 1, 1.5, 2 ft³, and 30 kgr with 1 ft³; [CP-TANKS] for v.
     * Deviation: what lies between the named sizes is interpolated.
     */
    public static double resinLitresOfNameplate(double nameplateGrams) {
        Guard.positive(nameplateGrams, "nameplateGrams");
        double below = 0;
        for (StandardTank tank : ALL) {
            double from = TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE * tank.resinLitres;
            double belowTo = TotalCapacity.HIGHEST_NAMEPLATE_GRAMS_PER_LITRE * below;
            if (nameplateGrams < from) {
                return below + (tank.resinLitres - below) * (nameplateGrams - belowTo) / (from - belowTo);
            }
            if (nameplateGrams <= TotalCapacity.HIGHEST_NAMEPLATE_GRAMS_PER_LITRE * tank.resinLitres) {
                return tank.resinLitres;
            }
            below = tank.resinLitres;
        }
        return nameplateGrams / TotalCapacity.HIGHEST_NAMEPLATE_GRAMS_PER_LITRE;
    }

    /** The standard tank most like a size. */
    public static StandardTank nearest(double diameterMetres, double heightMetres) {
        return ALL.stream().min(Comparator.comparingDouble(tank -> Math.abs(StrictMath.log(diameterMetres / tank.diameterMetres))
                + Math.abs(StrictMath.log(heightMetres / tank.heightMetres)))).orElseThrow();
    }

    /** Whether a size measured by tape is this one. */
    public boolean isOfSize(double otherDiameterMetres, double otherHeightMetres) {
        return Math.abs(otherDiameterMetres - diameterMetres) <= ASSUMED_DIAMETER_SLACK_METRES * (1 + ROUNDING)
                && Math.abs(otherHeightMetres - heightMetres) <= ASSUMED_HEIGHT_SLACK_METRES * (1 + ROUNDING);
    }

    /**
     * Resin that usually goes with a tank.
     *
     * <pre>V = v where the size is a standard one;  V = v · D² H / (d² h) elsewhere</pre>
     *
     * <p>V litres of resin; D, H diameter and height of the tank, m; v, d, h those of the nearest standard tank.
     * Validity: cylinders.
     * Source: [CP-TANKS].
     * Deviation: other sizes are filled as the nearest standard tank is, to 52 to 62 % of their cylinder.
     */
    public static double resinLitresOfTank(double diameterMetres, double heightMetres) {
        Guard.positive(diameterMetres, "diameterMetres");
        Guard.positive(heightMetres, "heightMetres");
        StandardTank tank = nearest(diameterMetres, heightMetres);
        double wider = diameterMetres / tank.diameterMetres;
        return tank.isOfSize(diameterMetres, heightMetres) ? tank.resinLitres
                : tank.resinLitres * wider * wider * heightMetres / tank.heightMetres;
    }

    /** The smallest size that is sold with at least {@code resinLitres}, if any is. */
    public static Optional<StandardTank> smallestFor(double resinLitres) {
        Guard.positive(resinLitres, "resinLitres");
        return ALL.stream().filter(tank -> tank.resinLitres >= resinLitres * (1 - ROUNDING)).findFirst();
    }
}
