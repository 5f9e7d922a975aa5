// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.Exact;
import dev.brinebook.source.Table;
import java.util.List;

/**
 * Demand curve of the plumbing code: the flow that pipes are sized for, against fixture units.
 *
 * <p>Not for softeners: houses use a half or a third of it. Source: [IPC-E103]; [CP-DEMAND-CURVE] how far it is off.
 */
public enum DemandCurve {
    /** Buildings whose closets and urinals have tanks. */
    FLUSH_TANK(1),
    /** Buildings where flushometer valves flush. */
    FLUSHOMETER(2);

    private final double[] units;
    private final double[] gpm;

    DemandCurve(int column) {
        List<String[]> rows = Table.read("/household/demand-curve.csv", ',', 3).stream()
                .filter(row -> !row[column].isEmpty()).toList();
        units = rows.stream().mapToDouble(row -> Double.parseDouble(row[0])).toArray();
        gpm = rows.stream().mapToDouble(row -> Double.parseDouble(row[column])).toArray();
        for (int i = 1; i < units.length; i++) {
            Guard.positive(units[i] - units[i - 1], "step of fixture units");
            Guard.positive(gpm[i] - gpm[i - 1], "step of demand");
        }
    }

    public double minFixtureUnits() {
        return units[0];
    }

    public double maxFixtureUnits() {
        return units[units.length - 1];
    }

    /**
     * Demand that pipes are sized for.
     *
     * <pre>
     * Q = Q[i] + (Q[i+1] - Q[i]) (W - W[i]) / (W[i+1] - W[i]),  W[i] &lt;= W &lt;= W[i+1]
     * </pre>
     *
     * <p>W sum of the fixture units; Q flow of the table, gpm, returned in L/min.
     * Validity: from 1 unit (flushometer valves 5) to 5000; outside there is no answer, as the curve says nothing of one small
     * fixture, which takes its own flow, nor of larger buildings.
     * Source: [IPC-E103] table E103.3(3).
     * Deviation: linear between the rows of the table.
     */
    public OptionalResult litresPerMinute(double fixtureUnits) {
        Guard.notNegative(fixtureUnits, "fixtureUnits");
        if (!Guard.isWithin(fixtureUnits, minFixtureUnits(), Double.MAX_VALUE)) {
            return OptionalResult.none(NoResultReason.BELOW_DEMAND_CURVE);
        }
        if (!Guard.isWithin(fixtureUnits, 0, maxFixtureUnits())) {
            return OptionalResult.none(NoResultReason.ABOVE_DEMAND_CURVE);
        }
        int i = 0;
        while (i < units.length - 2 && fixtureUnits > units[i + 1]) {
            i++;
        }
        double slope = (gpm[i + 1] - gpm[i]) / (units[i + 1] - units[i]);
        return OptionalResult.of((gpm[i] + slope * (fixtureUnits - units[i])) * Exact.US_GALLON_LITRES);
    }
}
