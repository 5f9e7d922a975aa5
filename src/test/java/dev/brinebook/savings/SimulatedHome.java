// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.household.DailyUse;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.SampledYear;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.measurement.Reading;
import dev.brinebook.randomness.RandomStream;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.SimulationInput;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * An invented home whose days and softener are simulated day by day, whose bags are bought two at a time, and whose saving in the long
 * run is known. It knows nothing of how a saving is verified.
 */
final class SimulatedHome {

    private static final LocalDate START = LocalDate.of(2021, 1, 1);
    private static final double POUND = 0.45359237;
    private static final double BAG = 40 * POUND;
    private static final double CAPACITY_GRAMS = 1555;
    private static final int MOST_DAYS_BEFORE_READING = 60;
    /** Days that make the long run. */
    private static final int LONG_RUN_DRAWS = 6;
    /** Standard deviation of what a technician finds for the salt of a regeneration about the truth. */
    private static final double DOSE_ERROR = SavingsPeriod.ASSUMED_DOSE_UNCERTAINTY;

    /** What is read in a period. */
    enum Read {
        COUNT, COUNT_WITHOUT_WATER, BOOKS, COUNT_AND_BOOKS, BAGS_ALONE
    }

    private final long seed;
    private final double cv;
    private final double levelBefore;
    private final double levelAfter;
    private final double meanLitres;
    private final double hardness;
    private final Policy policyBefore;
    private final Policy policyAfter;
    private final double doseBefore;
    private final double doseAfter;
    private final double trueShare;

    SimulatedHome(long seed, boolean clockBefore, double levelSpread) {
        this.seed = seed;
        RandomStream random = new RandomStream(seed, 1_000_000);
        cv = DayVariation.UNKNOWN_PERSONS_CV * Math.exp(UseChange.USUAL_SCATTER_SPREAD * random.nextNormal());
        meanLitres = 350 + 600 * random.nextDouble();
        hardness = 200 + 250 * random.nextDouble();
        levelBefore = Math.exp(levelSpread * random.nextNormal());
        levelAfter = Math.exp(levelSpread * random.nextNormal());
        double volume = 1000 * CAPACITY_GRAMS / hardness;
        double reserve = 1.5 * meanLitres;
        int days = Math.max(1, (int) Math.round((volume - reserve) / meanLitres * (0.5 + 0.4 * random.nextDouble())));
        policyBefore = clockBefore ? new ClockEveryDays(days)
                : new MeteredDelayed(Math.max(0.5 * volume, volume * (0.6 + 0.3 * random.nextDouble())), reserve, Policy.NO_OVERRIDE);
        policyAfter = new MeteredDelayed(volume, reserve * (0.7 + 0.4 * random.nextDouble()), Policy.NO_OVERRIDE);
        doseBefore = 5 + 2 * random.nextDouble();
        doseAfter = doseBefore * (0.75 + 0.3 * random.nextDouble());
        trueShare = longRunShare();
    }

    /** Share of the salt that is saved in the long run at the level of use before. */
    double trueShare() {
        return trueShare;
    }

    SavingsPeriod before(Read read, int days) {
        return period(read, policyBefore, levelBefore, doseBefore, days, 10);
    }

    SavingsPeriod after(Read read, int days) {
        return period(read, policyAfter, levelAfter, doseAfter, days, 20);
    }

    private double longRunShare() {
        SampledYear days = new SampledYear(model(levelBefore), START, Days.MAX_DAYS, seed);
        double before = 0;
        double after = 0;
        for (int draw = 0; draw < LONG_RUN_DRAWS; draw++) {
            days.draw(100 + draw);
            before += 0.5 + Simulation.totals(days, hardness, regeneration(doseBefore), policyBefore).regenerations();
            after += 0.5 + Simulation.totals(days, hardness, regeneration(doseAfter), policyAfter).regenerations();
        }
        return 1 - doseAfter * after / (doseBefore * before);
    }

    private UseModel model(double level) {
        return new UseModel(WeekdayMeans.ofWeek(level * meanLitres, WeekdayMeans.DEFAULT_WEEKEND_RATIO), DayVariation.ofCv(cv),
                UseModel.EVEN_MONTHS, Occupancy.Chain.USUAL, new UseChange(0, 0, UseChange.USUAL_DAY_CORRELATION));
    }

    private static Regeneration regeneration(double dose) {
        return new Regeneration(CAPACITY_GRAMS, 1000 * dose, 200, 60);
    }

    private SavingsPeriod period(Read read, Policy policy, double level, double dose, int length, long draw) {
        RandomStream random = new RandomStream(seed, 1_000 * length + 100 * read.ordinal() + draw);
        int first = 20 + (int) (MOST_DAYS_BEFORE_READING * random.nextDouble());
        DailyUse drawn = new SampledYear(model(level), START, first + length, seed).draw(draw);
        Days days = Days.series(START, IntStream.range(0, first + length).mapToDouble(drawn::useLitres).toArray());
        int[] on = Simulation.simulate(new SimulationInput(days, hardness, regeneration(dose)), policy).events().stream()
                .mapToInt(event -> (int) ChronoUnit.DAYS.between(START, event.date())).toArray();
        int counted = (int) Arrays.stream(on).filter(day -> day >= first && day < first + length).count();
        double litres = IntStream.range(first, first + length).mapToDouble(days::useLitres).sum() / length;
        Reading found = Reading.normal(dose * (1 + DOSE_ERROR * random.nextNormal()), DOSE_ERROR * dose);
        return new SavingsPeriod(length, policy.byClock() ? StartedBy.CLOCK : StartedBy.METER_DELAYED,
                read == Read.COUNT_WITHOUT_WATER ? OptionalDouble.empty() : OptionalDouble.of(litres),
                read == Read.BOOKS || read == Read.BAGS_ALONE ? OptionalInt.empty() : OptionalInt.of(Math.max(1, counted)),
                Optional.of(found), read == Read.COUNT || read == Read.COUNT_WITHOUT_WATER ? Optional.empty()
                        : Optional.of(books(on, first, length, dose, read, random)), OptionalDouble.empty());
    }

    /** Two bags are put in when less than two are left. */
    private Reading books(int[] on, int first, int length, double dose, Read read,
            RandomStream random) {
        double salt = 2 * BAG * (1 + random.nextDouble());
        double added = 0;
        double start = 0;
        int next = 0;
        for (int day = 0; day <= first + length; day++) {
            if (day == first) {
                start = salt;
                added = 0;
            }
            if (day == first + length) {
                break;
            }
            for (; next < on.length && on[next] == day; next++) {
                salt -= dose;
            }
            while (salt < 2 * BAG) {
                salt += 2 * BAG;
                added += 2 * BAG;
            }
        }
        if (read == Read.BAGS_ALONE) {
            return SavingsPeriod.bagsAlone(Math.max(added, BAG), 2 * BAG);
        }
        double plusMinus = SavingsPeriod.ASSUMED_LEVEL_PLUS_MINUS_KILOGRAMS;
        double used = added + start + plusMinus * (2 * random.nextDouble() - 1) - salt - plusMinus * (2 * random.nextDouble() - 1);
        return SavingsPeriod.balance(Math.max(used, BAG / 4), 0, 0, plusMinus);
    }
}
