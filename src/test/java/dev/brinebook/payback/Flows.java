// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;

/** Cash flows for tests: read from a table cell, or generated from a seed. */
final class Flows {

    private Flows() {
    }

    static double[] parse(String cell) {
        return Stream.of(cell.strip().split(" +")).mapToDouble(Double::parseDouble).toArray();
    }

    /** An investment, then 1 to 30 years of savings, all above zero, that together exceed half of it. */
    static double[] ordinary(Random random) {
        double[] flows = new double[2 + random.nextInt(30)];
        double sum = 0;
        for (int year = 1; year < flows.length; year++) {
            flows[year] = 20 + 180 * random.nextDouble();
            sum += flows[year];
        }
        flows[0] = -sum * (0.2 + 1.3 * random.nextDouble());
        return flows;
    }

    static double[] scaled(double[] flows, double factor) {
        return Arrays.stream(flows).map(flow -> flow * factor).toArray();
    }

    static double[] savings(double[] flows) {
        return Arrays.copyOfRange(flows, 1, flows.length);
    }
}
