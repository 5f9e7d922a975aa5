// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.measurement.Reading;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** How many weeks of readings it takes until there is a verdict. */
public final class WaitingTime {

    /** Longest wait looked at. */
    public static final int MAX_WEEKS = 156;
    /** Probability of a verdict that is called likely. */
    public static final double LIKELY = 0.8;
    /** Fewest regenerations after the change that say something: with fewer the intervals are too narrow. */
    public static final int ASSUMED_FEWEST = 3;
    private static final int DAYS_PER_WEEK = 7;

    private WaitingTime() {
    }

    /**
     * Weeks more until the saving, if it stays as seen, gives a verdict; empty where waiting alone never does within
     * {@value #MAX_WEEKS} weeks.
     */
    public static OptionalInt more(SavingsPeriod before, SavingsPeriod after, UseScatter scatter, SavingsGoal goal) {
        double left = 1 - SavingsEstimate.of(before, after, scatter).share();
        return first(before, weeks -> longer(after, after.days() + DAYS_PER_WEEK * weeks), scatter,
                StrictMath.log(left), goal, 0, (SavingsPeriod.MAX_DAYS - after.days()) / DAYS_PER_WEEK);
    }

    /**
     * Weeks after the change until a true saving gives its verdict.
     *
     * <pre>|ln(1 − s) − ln(1 − s0)| ≥ (z_p + z_q) u(T)</pre>
     *
     * <p>s true saving; s0 the least that fulfils the promise; z_p quantile of the probability of the verdict; z_q of that with which the
     * verdict comes, 0 for an even chance; u by {@link SavingsEstimate} with T days after.
     * Validity: the dose as before the change. Source: power of a one-sided test, by definition. Deviation: none.
     *
     * @param likely whether the verdict has to be likely, {@value #LIKELY}, instead of an even chance
     */
    public static OptionalInt beforehand(SavingsPeriod before, StartedBy startedBy, double trueShare, UseScatter scatter,
            SavingsGoal goal, boolean likely) {
        return first(before, weeks -> expected(before, startedBy, trueShare, DAYS_PER_WEEK * weeks), scatter,
                StrictMath.log(1 - trueShare), goal, likely ? SavingsEstimate.oneSided(LIKELY) : 0, MAX_WEEKS);
    }

    private static OptionalInt first(SavingsPeriod before, IntFunction<SavingsPeriod> after, UseScatter scatter, double logLeft,
            SavingsGoal goal, double power, int most) {
        double away = Math.abs(logLeft - StrictMath.log(1 - goal.leastShare()));
        double wanted = SavingsEstimate.oneSided(goal.confidence()) + power;
        for (int weeks = 1; weeks <= Math.min(MAX_WEEKS, most); weeks++) {
            SavingsPeriod period = after.apply(weeks);
            if (period.count() >= ASSUMED_FEWEST
                    && away >= wanted * SavingsEstimate.of(before, period, scatter).logUncertainty()) {
                return OptionalInt.of(weeks);
            }
        }
        return OptionalInt.empty();
    }

    /** A period that goes on as it began; levels and doses stay as uncertain as they are. */
    private static SavingsPeriod longer(SavingsPeriod period, int days) {
        double factor = (double) days / period.days();
        return new SavingsPeriod(days, period.startedBy(), period.litresPerDay(), period.regenerations().isPresent()
                ? OptionalInt.of((int) Math.round(factor * period.regenerations().getAsInt())) : OptionalInt.empty(), period.dose(),
                period.books().map(books -> books.shiftedTo(factor * books.value())), period.hardness());
    }

    /** A period after the change with the means of the one before. */
    private static SavingsPeriod expected(SavingsPeriod before, StartedBy startedBy, double share, int days) {
        double factor = (1 - share) * days / before.days();
        Optional<Reading> books = before.books().map(salt -> salt.shiftedTo(factor * salt.value()));
        OptionalInt count = before.regenerations().isPresent()
                ? OptionalInt.of((int) Math.max(1, Math.round(factor * before.regenerations().getAsInt()))) : OptionalInt.empty();
        return new SavingsPeriod(days, startedBy, before.litresPerDay(), count, before.dose(), books, before.hardness());
    }
}
