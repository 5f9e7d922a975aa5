// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A kind of plumbing fixture, with the values of {@code fixtures.csv}.
 *
 * <p>Source: [IPC-E103] fixture units, [BUCHBERGER-2017] busy probability and flow, [DIN-1988-300] design flow.
 */
public enum Fixture {
    /** A shower or tub, a lavatory and a water closet with a tank. */
    BATHROOM_GROUP,
    /** The same with a flushometer valve. */
    BATHROOM_GROUP_FLUSHOMETER,
    BATHTUB,
    TUB_SHOWER,
    SHOWER,
    LAVATORY,
    BIDET,
    WATER_CLOSET_TANK,
    WATER_CLOSET_FLUSHOMETER_TANK,
    WATER_CLOSET_FLUSHOMETER,
    URINAL_TANK,
    /** With a flushometer valve of 3/4 inch. */
    URINAL_FLUSHOMETER,
    /** With a flushometer valve of 1 inch. */
    URINAL_LARGE_FLUSHOMETER,
    KITCHEN_SINK,
    DISHWASHER,
    /** Of 8 lb of clothes. */
    CLOTHES_WASHER,
    /** Of 15 lb of clothes. */
    LARGE_CLOTHES_WASHER,
    /** One to three trays. */
    LAUNDRY_TRAY,
    SERVICE_SINK,
    DRINKING_FOUNTAIN,
    /** Sink and laundry tray in one. */
    COMBINATION_FIXTURE;

    private record Row(OptionalDouble privateUnits, OptionalDouble publicUnits, OptionalDouble busyProbability,
            OptionalDouble gpm, OptionalDouble designLitresPerSecond, List<Fixture> parts) {
    }

    private static final class Rows {

        private static final Map<Fixture, Row> BY_FIXTURE = read();

        private static Map<Fixture, Row> read() {
            Map<Fixture, Row> rows = new EnumMap<>(Fixture.class);
            for (String[] row : Table.read("/household/fixtures.csv", ',', 8)) {
                OptionalDouble oneConnection = number(row[5]);
                OptionalDouble design = oneConnection.isEmpty() ? oneConnection
                        : OptionalDouble.of(oneConnection.getAsDouble() * Integer.parseInt(row[6]));
                List<Fixture> parts = row[7].isEmpty() ? List.of() : Arrays.stream(row[7].split(" ")).map(Rows::named)
                        .toList();
                rows.put(named(row[0]), new Row(number(row[1]), number(row[2]), number(row[3]), number(row[4]), design,
                        parts));
            }
            return rows;
        }

        private static Fixture named(String name) {
            return valueOf(name.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT));
        }

        private static OptionalDouble number(String cell) {
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        }
    }

    /** Whether it is a bathroom group, whose flows are those of its parts. */
    public boolean isGroup() {
        return !row().parts().isEmpty();
    }

    /** The fixtures that it consists of: itself, unless it is a group. */
    public List<Fixture> parts() {
        return isGroup() ? row().parts() : List.of(this);
    }

    /** Whether a flushometer valve, which takes far more than a tank for some seconds, flushes it. */
    public boolean isFlushedByValve() {
        return this == BATHROOM_GROUP_FLUSHOMETER || this == WATER_CLOSET_FLUSHOMETER || this == URINAL_FLUSHOMETER
                || this == URINAL_LARGE_FLUSHOMETER;
    }

    /** Whether it is a shower, in use for minutes at a time. */
    public boolean isShower() {
        return this == SHOWER || this == TUB_SHOWER;
    }

    /** Water supply fixture units of one; none where the table has none for this use. */
    public OptionalDouble fixtureUnits(FixtureUse use) {
        return use == FixtureUse.PRIVATE ? row().privateUnits() : row().publicUnits();
    }

    /** How likely one runs in the busy hour of a home; none where it was not measured. */
    public OptionalDouble busyProbability(FixtureUse use) {
        return use == FixtureUse.PRIVATE ? row().busyProbability() : OptionalDouble.empty();
    }

    /** Flow of one, US gallons per minute; none where it was not measured. */
    public OptionalDouble gpm() {
        return row().gpm();
    }

    /** Design flow of one, of its cold and its hot connection together; none where the table has none. */
    public OptionalDouble designLitresPerSecond() {
        return row().designLitresPerSecond();
    }

    private Row row() {
        return Rows.BY_FIXTURE.get(this);
    }
}
