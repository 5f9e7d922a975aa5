package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import dev.brinebook.source.Table;
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

    public StandardTank {
        Guard.positive(diameterMetres, "diameterMetres");
        Guard.positive(heightMetres, "heightMetres");
        Guard.positive(resinLitres, "resinLitres");
    }

    /** All sizes, smallest first. */
    public static List<StandardTank> all() {
        return ALL;
    }

    /** The smallest size that is sold with at least {@code resinLitres}, if any is. */
    public static Optional<StandardTank> smallestFor(double resinLitres) {
        Guard.positive(resinLitres, "resinLitres");
        return ALL.stream().filter(tank -> tank.resinLitres >= resinLitres * (1 - ROUNDING)).findFirst();
    }
}
