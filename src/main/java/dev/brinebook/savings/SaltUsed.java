// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.measurement.Combination;
import dev.brinebook.measurement.Reading;
import java.util.Optional;

/**
 * The salt of a period by count and dose, by bags, or by both.
 *
 * @param kilograms used
 * @param doseShare standard uncertainty from the dose, as a share of the salt
 * @param booksShare standard uncertainty from bags and levels, likewise
 * @param agrees whether count and dose agree with the bags
 */
record SaltUsed(double kilograms, double doseShare, double booksShare, boolean agrees) {

    /**
     * The weighted mean of both answers, or the one there is.
     *
     * <pre>S = w N D + (1 − w) B</pre>
     *
     * <p>N count; D dose; B salt by bags and levels; w weight by {@link Combination}. Where they contradict each other the salt is that
     * of the bags, which do not rest on what was set.
     * Validity: dose and bags read independently. Source: [GUM] 5.1.2. Deviation: none.
     */
    static SaltUsed of(SavingsPeriod period) {
        Optional<Reading> counted = period.dose().filter(dose -> period.regenerations().isPresent());
        if (period.books().isEmpty()) {
            Reading dose = counted.orElseThrow();
            return new SaltUsed(period.count() * dose.value(), dose.standardUncertainty() / dose.value(), 0, true);
        }
        Reading books = period.books().get();
        if (counted.isEmpty()) {
            return new SaltUsed(books.value(), 0, books.standardUncertainty() / books.value(), true);
        }
        double byCount = period.count() * counted.get().value();
        double byCountError = period.count() * counted.get().standardUncertainty();
        double[] salts = {byCount, books.value()};
        Combination both = Combination.of(salts, new double[] {byCountError, books.standardUncertainty()});
        if (!both.hasMean()) {
            return new SaltUsed(books.value(), 0, books.standardUncertainty() / books.value(), false);
        }
        double mean = both.mean(salts);
        return new SaltUsed(mean, both.weights()[0] * byCountError / mean, both.weights()[1] * books.standardUncertainty() / mean,
                true);
    }
}
