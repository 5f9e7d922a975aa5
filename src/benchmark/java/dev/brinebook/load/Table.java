// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What is printed: rows of a table in Markdown, and the few statistics that they need. */
final class Table {

    private static final int DIVISIONS = 1_000_000;
    private static final int DIVISION_ROUNDS = 50;

    private Table() {
    }

    /** Processor time of a million divisions, each waiting for the one before: by it figures compare from machine to machine. */
    static double divisionMillis() {
        double[] millis = new double[DIVISION_ROUNDS];
        double x = 1;
        for (int round = 0; round < millis.length; round++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int n = 0; n < DIVISIONS; n++) {
                x = 1 / (1 + x);
            }
            millis[round] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e6 + x * 0;
        }
        return median(millis);
    }

    static void heading(String text, String... columns) {
        System.out.println("\n" + text + "\n");
        row(List.of(columns));
        row(Arrays.stream(columns).map(column -> "---").toList());
    }

    static void row(List<String> cells) {
        System.out.println("| " + String.join(" | ", cells) + " |");
    }

    /** A number to three significant digits, with a comma between thousands. */
    static String number(double value) {
        double size = Math.abs(value);
        String form = size >= 100 ? "%,.0f" : size >= 10 ? "%.1f" : size >= 1 ? "%.2f" : "%.3f";
        return String.format(Locale.ROOT, form, value);
    }

    static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    /** Median of the ratios within each round. */
    static double ratio(double[] own, double[] other) {
        double[] ratios = new double[own.length];
        Arrays.setAll(ratios, round -> own[round] / other[round]);
        return median(ratios);
    }

    /** The exponent b of y = a x^b, by least squares of the logarithms. */
    static double exponent(double[] x, double[] y) {
        double meanX = Arrays.stream(x).map(Math::log).average().orElseThrow();
        double meanY = Arrays.stream(y).map(Math::log).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < x.length; i++) {
            above += (Math.log(x[i]) - meanX) * (Math.log(y[i]) - meanY);
            below += (Math.log(x[i]) - meanX) * (Math.log(x[i]) - meanX);
        }
        return above / below;
    }
}
