// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.quantity.WaterPerCapacityUnit;
import dev.brinebook.source.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A published line between efficient and wasteful softening.
 *
 * <p>Not a certification: the value compared with a line here is a computed estimate, and the certified rating of a model
 * comes from a test.
 *
 * <p>Source: [CA-HSC-116785] section 116785(b), and 116790 for appliances that a clock starts, in place before 1980 in the
 * areas named there; [DOE-BASC] for the product standard; [MMSD].
 *
 * @param code stable name of the line
 * @param sourceKey key of the source
 * @param startedBy what must start the regeneration for the line to apply
 * @param minSaltEfficiencyGramsPerGram least hardness removed per salt used, grams as CaCO₃ per gram
 * @param maxWaterLitresPerKilogram most regeneration water per kilogram of hardness as CaCO₃, if the line asks
 * @param minDaysBetween least days between two regenerations, if the line asks
 * @param installedFromYear first year of installation that the line is about, if it names one
 */
public record EfficiencyLine(String code, String sourceKey, StartedBy startedBy, double minSaltEfficiencyGramsPerGram,
        OptionalDouble maxWaterLitresPerKilogram, OptionalDouble minDaysBetween, OptionalInt installedFromYear) {

    /** What starts a regeneration. */
    public enum StartedBy {
        /** Metered or sensed use. */
        DEMAND,
        CLOCK,
        ANY
    }

    /** Whether a softener meets a line. */
    public enum Standing {
        MET, NOT_MET, NOT_APPLICABLE
    }

    /** What a softener misses a line by. */
    public enum Shortfall {
        SALT, WATER, INTERVAL
    }

    /**
     * The performance of a softener that lines are about.
     *
     * @param saltEfficiencyGramsPerGram hardness removed per salt used, grams as CaCO₃ per gram
     * @param waterLitresPerKilogram regeneration water per kilogram of hardness removed, as CaCO₃
     * @param demandStarted whether use starts the regeneration, rather than a clock
     * @param intervalDays days between two regenerations
     */
    public record Performance(double saltEfficiencyGramsPerGram, double waterLitresPerKilogram, boolean demandStarted,
            double intervalDays) {

        public Performance {
            Guard.notNegative(saltEfficiencyGramsPerGram, "saltEfficiencyGramsPerGram");
            Guard.notNegative(waterLitresPerKilogram, "waterLitresPerKilogram");
            Guard.positive(intervalDays, "intervalDays");
        }
    }

    /** Whether a softener meets one line, and what it misses it by. */
    public record Verdict(EfficiencyLine line, Standing standing, List<Shortfall> shortfalls) {

        public Verdict {
            shortfalls = List.copyOf(shortfalls);
        }
    }

    /** How many lines there are. */
    public static final int COUNT = 5;

    private static final List<EfficiencyLine> ALL =
            Table.read("/resin/efficiency-lines.csv", ',', 7).stream().map(EfficiencyLine::parse).toList();

    public EfficiencyLine {
        Guard.within(minSaltEfficiencyGramsPerGram, 0, Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(),
                "minSaltEfficiencyGramsPerGram");
    }

    /** All lines, in the order of the table. */
    public static List<EfficiencyLine> all() {
        return ALL;
    }

    /** Whether a softener meets each line. */
    public static List<Verdict> standings(Performance performance) {
        return ALL.stream().map(line -> line.verdict(performance)).toList();
    }

    /**
     * Whether a salt efficiency is at least that of the line, within {@link Guard#ROUNDING}: 20 kgr from 5 lb are
     * 4,000 gr/lb. Other requirements of the line are not checked.
     */
    public boolean isReachedBy(double saltEfficiencyGramsPerGram) {
        return Guard.isWithin(saltEfficiencyGramsPerGram, minSaltEfficiencyGramsPerGram, Double.POSITIVE_INFINITY);
    }

    /** Whether a softener meets this line: not applicable when it is started otherwise than the line requires. */
    public Verdict verdict(Performance performance) {
        if (startedBy != StartedBy.ANY && (startedBy == StartedBy.DEMAND) != performance.demandStarted) {
            return new Verdict(this, Standing.NOT_APPLICABLE, List.of());
        }
        List<Shortfall> shortfalls = new ArrayList<>();
        if (!isReachedBy(performance.saltEfficiencyGramsPerGram)) {
            shortfalls.add(Shortfall.SALT);
        }
        if (!(performance.waterLitresPerKilogram <= maxWaterLitresPerKilogram.orElse(Double.POSITIVE_INFINITY))) {
            shortfalls.add(Shortfall.WATER);
        }
        if (!(performance.intervalDays >= minDaysBetween.orElse(0))) {
            shortfalls.add(Shortfall.INTERVAL);
        }
        return new Verdict(this, shortfalls.isEmpty() ? Standing.MET : Standing.NOT_MET, shortfalls);
    }

    private static EfficiencyLine parse(String[] row) {
        OptionalDouble gallons = number(row[4]);
        return new EfficiencyLine(row[0], row[1], StartedBy.valueOf(row[2]),
                SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(Double.parseDouble(row[3])),
                gallons.isEmpty() ? gallons
                        : OptionalDouble.of(WaterPerCapacityUnit.GALLON_PER_KILOGRAIN.toBase(gallons.getAsDouble())),
                number(row[5]), row[6].isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row[6])));
    }

    private static OptionalDouble number(String cell) {
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
    }
}
