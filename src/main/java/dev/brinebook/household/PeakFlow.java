package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import dev.brinebook.source.Table;
import java.util.List;

/** How much water a house draws at once. */
public final class PeakFlow {

    /** 99th percentile of the standard normal distribution. */
    private static final double Z_99 = 2.326348;
    public static final int MAX_BATHROOMS = 12;
    /** Flow of the shower that a lasting flow is counted in, gpm. Source: [BUCHBERGER-2017]. */
    private static final double SHOWER_GPM = 2.0;
    private static final List<String[]> HOUSE = Table.read("/household/fixtures.csv", ',', 4);

    /**
     * Fixtures of one kind.
     *
     * @param count how many
     * @param busyProbability probability that one runs in the busy hour. Source: [BUCHBERGER-2017]
     * @param litresPerMinute flow of one
     */
    public record Fixtures(int count, double busyProbability, double litresPerMinute) {

        public Fixtures {
            Guard.within(count, 0, 10_000, "count");
            Guard.within(busyProbability, 0, 1, "busyProbability");
            Guard.notNegative(litresPerMinute, "litresPerMinute");
        }

        static Fixtures gpm(int count, double busyProbability, double gpm) {
            return new Fixtures(count, busyProbability, gpm * Exact.US_GALLON_LITRES);
        }
    }

    private PeakFlow() {
    }

    /**
     * Flow that the fixtures together stay below in 99 of 100 moments in which any runs.
     *
     * <pre>
     * Q99 = (mu + z sqrt((1 - P0) s2 - P0 mu^2)) / (1 - P0)
     * mu = sum n p q,  s2 = sum n p (1 - p) q^2,  P0 = prod (1 - p)^n,  z = 2.326348
     * </pre>
     *
     * <p>n count, p busy probability, q flow. A normal fit of the flow given that some fixture runs; with few fixtures
     * the fit is coarse, and where no fixture ever runs the flow is 0.
     * Source: [BUCHBERGER-2017] modified Wistort, zero-truncated; re-derived from the mean and variance of a truncated
     * sum.
     */
    public static double percentile99LitresPerMinute(List<Fixtures> fixtures) {
        double mean = 0;
        double variance = 0;
        double allIdle = 1;
        for (Fixtures f : fixtures) {
            mean += f.count() * f.busyProbability() * f.litresPerMinute();
            variance += f.count() * f.busyProbability() * (1 - f.busyProbability()) * f.litresPerMinute()
                    * f.litresPerMinute();
            allIdle *= StrictMath.pow(1 - f.busyProbability(), f.count());
        }
        if (mean == 0) {
            return 0;
        }
        double spread = Math.max(0, (1 - allIdle) * variance - allIdle * mean * mean);
        return (mean + Z_99 * Math.sqrt(spread)) / (1 - allIdle);
    }

    /**
     * The fixtures taken for a house of which only the bathrooms are known: in each a shower, a lavatory and a toilet,
     * and in the house a kitchen faucet, a clothes washer and a dishwasher.
     */
    public static List<Fixtures> assumedFixtures(int bathrooms) {
        Guard.within(bathrooms, 1, MAX_BATHROOMS, "bathrooms");
        return HOUSE.stream().map(row -> Fixtures.gpm(row[3].equals("bathroom") ? bathrooms : 1,
                Double.parseDouble(row[1]), Double.parseDouble(row[2]))).toList();
    }

    /** Lasting flow taken for a house of which only the bathrooms are known: a shower in every second, at least one. */
    public static double assumedContinuousLitresPerMinute(int bathrooms) {
        int showers = (Guard.within(bathrooms, 1, MAX_BATHROOMS, "bathrooms") + 1) / 2;
        return showers * SHOWER_GPM * Exact.US_GALLON_LITRES;
    }

    /** Bathrooms taken for a number of people: one for each two. */
    public static int assumedBathrooms(int people) {
        return Math.min(MAX_BATHROOMS, (Guard.within(people, 1, Demand.MAX_PEOPLE, "people") + 1) / 2);
    }
}
