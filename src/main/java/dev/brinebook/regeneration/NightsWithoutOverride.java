// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/** The nights of cycles that only use ends, from the {@link RenewalMeasure}. */
final class NightsWithoutOverride implements CycleNights {

    private final RenewalRows rows;
    private final LatticeNight[] days;
    private final RenewalMeasure measure;
    /** By weekday on which a cycle starts, and class. */
    private final double[][][] before;

    NightsWithoutOverride(RenewalRows rows, LatticeNight[] days, int points) {
        this.rows = rows;
        this.days = days;
        measure = rows.measure(points);
        before = new double[rows.weekdays()][days.length][points];
        for (int start = 0; start < before.length; start++) {
            for (int weekday = 0; weekday < before.length; weekday++) {
                add(measure.days(start, weekday), before[start][rows.classOf(weekday, 1)]);
            }
        }
    }

    private static void add(double[] days, double[] to) {
        for (int k = 0; k < to.length; k++) {
            to[k] += days[k];
        }
    }

    @Override
    public double[] before(int state, int of) {
        return before[state][of];
    }

    @Override
    public Cycles cycles(int point) {
        return measure.cycles(new RenewalMeasure.DaysOfRule() {
            @Override
            public double waiting(double[] atHome, int weekday) {
                LatticeNight day = days[rows.classOf(weekday, 1)];
                int from = Math.max(0, point - day.width() + 1);
                double sum = 0;
                for (int k = 0; k < from; k++) {
                    sum += atHome[k];
                }
                // Shares are kept from the largest use down, so that both run the same way.
                return sum + LatticeRow.dot(atHome, from, day.downwards(), day.width() - 1 - point + from, point + 1 - from);
            }

            @Override
            public double hard(double[] atHome, int weekday, double ending, double home) {
                return 0;
            }

            @Override
            public double hardLitres(double[] atHome, int weekday) {
                return 0;
            }
        });
    }
}
