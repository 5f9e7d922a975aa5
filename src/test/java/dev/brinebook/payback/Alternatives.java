// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import java.util.Random;

/** Alternatives for tests: plain ones, and ones generated from a seed. All invented. */
final class Alternatives {

    private Alternatives() {
    }

    static Prices prices(double growthSharePerYear, double discountSharePerYear) {
        return new Prices(0.5, 2, 2.5, 80, growthSharePerYear, discountSharePerYear);
    }

    static Alternative of(Outlay outlay, double yearlyCost) {
        return new Alternative("invented", outlay, new YearlyCost(yearlyCost, 0, 0, 0));
    }

    static Alternative random(Random random) {
        double cost = 200 + 3_000 * random.nextDouble();
        Outlay outlay = new Outlay(cost, 0.3 * cost * random.nextDouble(), 1 + random.nextInt(40), random.nextDouble(),
                1 + random.nextInt(30), 0.2 * random.nextDouble());
        return new Alternative("drawn", outlay, new YearlyCost(200 * random.nextDouble(), 50 * random.nextDouble(),
                50 * random.nextDouble(), 100 * random.nextDouble()));
    }

    static Alternative scaled(Alternative one, double factor) {
        Outlay outlay = one.outlay();
        YearlyCost yearly = one.yearly();
        return new Alternative(one.name(), new Outlay(outlay.firstCost() * factor, outlay.rebate() * factor,
                outlay.lifeYears(), outlay.financedShare(), outlay.loanYears(), outlay.loanSharePerYear()),
                new YearlyCost(yearly.salt() * factor, yearly.water() * factor, yearly.sewer() * factor,
                        yearly.service() * factor));
    }
}
