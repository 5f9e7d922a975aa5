// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Unit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What a technician reads with, and how far a reading by it may be off where nobody says otherwise.
 *
 * <p>Source: the table of each; [OWN-ASSUMPTION] where it says so.
 */
public enum Instrument {
    MARKED_BUCKET, WEIGHED_BUCKET, STOPWATCH, VALVE_TIMER, TAPE_ACROSS_TANK, NOMINAL_TANK_SIZE, DIP_ROD, TAPE_IN_BRINE_TANK, HYDROMETER,
    THERMOMETER, GAUGE_DIFFERENCE, WATER_METER, BRINE_BY_WATER, SALT_SLUMP, VOIDS_OF_ROCK_SALT, VOIDS_OF_OTHER_SALT,
    NAMEPLATE, CAPACITY_TABLE;

    private static final List<Row> ROWS = Table.read("/measurement/instruments.csv", ',', 6).stream().map(Row::of).toList();

    /**
     * A line of the table.
     *
     * @param at size of the reading that it is for, base unit; 0 where it is for any
     * @param amount half-width, base unit; a share of the reading where {@code relative}
     */
    private record Row(Instrument instrument, boolean relative, double at, double amount, String sourceKey) {

        static Row of(String[] cells) {
            boolean relative = cells[4].equals("%");
            double factor = relative ? 0.01 : baseOf(cells[4]);
            return new Row(Instrument.valueOf(cells[0].replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT)), relative,
                    Double.parseDouble(cells[2]) * baseOf(cells[3]), Double.parseDouble(cells[1]) * factor, cells[5]);
        }

        private static double baseOf(String symbol) {
            return Stream.of(VolumeUnit.values(), LengthUnit.values(), PressureUnit.values()).flatMap(Arrays::stream)
                    .map(Unit.class::cast).filter(unit -> unit.symbol().equals(symbol)).findFirst().map(unit -> unit.toBase(1)).orElse(1.0);
        }

        double halfWidth(double value) {
            return relative ? amount * value : amount;
        }
    }

    /** Key of the source of its half-width. */
    public String sourceKey() {
        return rows().get(0).sourceKey;
    }

    /**
     * Half-width of a reading in its base unit; a positive share of it, or one that grows with it between the sizes of the table and in
     * proportion beyond them.
     */
    public double halfWidth(double value) {
        Guard.positive(value, "value");
        List<Row> rows = rows();
        Row first = rows.get(0);
        Row last = rows.get(rows.size() - 1);
        if (rows.size() == 1) {
            return first.halfWidth(value);
        }
        if (value <= first.at) {
            return first.amount * value / first.at;
        }
        if (value >= last.at) {
            return last.amount * value / last.at;
        }
        int above = 1;
        while (rows.get(above).at < value) {
            above++;
        }
        Row low = rows.get(above - 1);
        Row high = rows.get(above);
        return low.amount + (high.amount - low.amount) * (value - low.at) / (high.at - low.at);
    }

    private List<Row> rows() {
        return ROWS.stream().filter(row -> row.instrument == this).sorted(Comparator.comparingDouble(Row::at)).toList();
    }
}
