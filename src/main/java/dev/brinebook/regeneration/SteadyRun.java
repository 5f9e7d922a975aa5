// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.household.UseModel;
import dev.brinebook.regeneration.RenewalTable.Detail;
import java.util.HashMap;
import java.util.Map;

/**
 * Long-run results of a policy in a household whose habits stay constant. No year is simulated, so nothing depends on chance.
 *
 * <p>Policies that wait for the night are evaluated on a {@link RenewalTable}, each month with its own factor; meters that start
 * at once by {@link ByDay}; a reserve that follows the last weeks, and a meter by day whose override often acts, by
 * fixed years.
 *
 * <p>Created once per household; not thread-safe. Intermediate results of one policy are cached for the next.
 */
final class SteadyRun {

    /** Regenerations, overrides, hard days, hard litres and bypassed litres of a year. */
    static final int SUMS = 5;
    private static final int STEPS = 10;
    private static final int STEPS_OF_WIDE_DAYS = 20;
    private static final double WIDE_CV = 0.6;
    private static final int WEEKDAYS = 7;

    private final UseModel model;
    private final SteadyUse use;
    private final int steps;
    private final double useFactor;
    /** The household of which this one is a multiple and whose table it shares; null where it has its own. */
    private final SteadyRun scaled;
    private Lattices lattices;
    private final Map<Integer, MeterRates> meterRates = new HashMap<>();
    /** Of the household itself; null where it is a multiple. */
    private final DrawnYears drawn;

    private SteadyRun(UseModel model, int steps, double useFactor, SteadyRun scaled) {
        this.model = model;
        this.steps = steps;
        this.useFactor = Guard.notNegative(useFactor, "useFactor");
        this.scaled = scaled;
        use = scaled == null ? new SteadyUse(model) : scaled.use;
        drawn = scaled == null ? new DrawnYears(model) : null;
    }

    /** The long run of a household. */
    static SteadyRun of(UseModel model) {
        return new SteadyRun(model, model.cv() > WIDE_CV ? STEPS_OF_WIDE_DAYS : STEPS, 1, null);
    }

    /** The same on a lattice that is less fine where days scatter widely: for one of several scatters that a home may have. */
    static SteadyRun coarse(UseModel model) {
        return new SteadyRun(model, model.cv() > MeterRates.LARGEST_CV ? STEPS_OF_WIDE_DAYS : STEPS, 1, null);
    }

    /** The same household with the use of every day multiplied by a factor. */
    SteadyRun times(double factor) {
        return factor == 1 ? this : new SteadyRun(model, steps, useFactor * factor, scaled == null ? this : scaled);
    }

    /** How the days come about. */
    UseModel model() {
        return model;
    }

    /** Mean use of a day, vacant ones included. */
    double meanLitres() {
        return useFactor * use.meanLitres();
    }

    /** Litres over which the chance of a day of more use falls by the factor e, far out: the scale of its gamma distribution. */
    double fallOffLitres() {
        return useFactor * use.busiestMean() * model.cv() * model.cv();
    }

    /**
     * Expected totals of a year.
     *
     * @param hardnessMilligramsPerLitre compensated hardness as CaCO3
     * @param regeneration what each regeneration restores and uses
     */
    YearlyTotals year(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration, Drawing drawing) {
        CancellationToken.obey();
        Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre");
        if (policy.followsWeekdays() || policy.startsAtOnce() && ByDay.overrideActs(policy, use, useFactor)) {
            return simulated(policy, hardnessMilligramsPerLitre, regeneration, drawing);
        }
        double[] sums = policy.startsAtOnce() ? ByDay.year(policy, hardnessMilligramsPerLitre, regeneration, use, useFactor)
                : byNight(WaitingRule.of(policy, hardnessMilligramsPerLitre, regeneration.capacityGrams()), Detail.HARD_LITRES);
        return totals(sums, hardnessMilligramsPerLitre, regeneration);
    }

    /** Expected hard days of a year alone. */
    double hardDaysPerYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration, Drawing drawing) {
        return policy.followsWeekdays() || policy.startsAtOnce()
                ? year(policy, hardnessMilligramsPerLitre, regeneration, drawing).hardDays()
                : hardDays(WaitingRule.of(policy, Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre"),
                        regeneration.capacityGrams()));
    }

    /** The same of a delayed meter, by what its count and its bed come to in litres. */
    double delayedHardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        boolean counts = !WaitingRule.callsEveryNight(meterLitres, callLitres);
        if (use.hasEvenMonths() && counts && sharesNights(overrideDays)) {
            double call = use.reachedLitres(callLitres / useFactor, overrideDays);
            if (isOnLattice(call, bedLitres / useFactor, overrideDays)) {
                CancellationToken.obey();
                return Days.PER_YEAR * meterRates(overrideDays).hardDays(call / use.meanAtHome(),
                        (bedLitres / useFactor - call) / use.meanAtHome());
            }
        }
        return hardDays(WaitingRule.delayed(meterLitres, callLitres, bedLitres, overrideDays));
    }

    /** The {@link #SUMS} of a year of a delayed meter whose bed outlasts its count. */
    double[] delayedYear(double callLitres, double bedLitres, int overrideDays) {
        return byNight(WaitingRule.delayed(bedLitres, callLitres, bedLitres, overrideDays), Detail.HARD_LITRES);
    }

    /** The {@link #SUMS} of a year of a clock without an override. */
    double[] clockYear(ClockEveryDays clock, double bedLitres) {
        return byNight(WaitingRule.of(clock, 1000, bedLitres), Detail.HARD_LITRES); // of a gram in each litre
    }

    /** Whether clocks can be read from the lattice, unless their bed is very small. */
    boolean readsClocksFromLattice() {
        return use.meanAtHome() > 0 && model.cv() >= MeterRates.LEAST_CV && model.cv() <= ClockRates.LARGEST_CV;
    }

    /** Whether most delayed meters with an override can be read from the lattice. */
    boolean readsFromLattice(int overrideDays) {
        return isQuick(model) && overrideDays != Policy.NO_OVERRIDE && sharesNights(overrideDays);
    }

    private double hardDays(WaitingRule rule) {
        CancellationToken.obey();
        return byNight(rule, Detail.HARD_DAYS)[2];
    }

    private YearlyTotals totals(double[] sums, double hardness, Regeneration regeneration) {
        return totals(sums, meanLitres(), hardness, regeneration);
    }

    /**
     * The totals of a year.
     *
     * @param sums the {@link #SUMS} of a year
     */
    static YearlyTotals totals(double[] sums, double meanLitres, double hardness, Regeneration regeneration) {
        double used = Days.PER_YEAR * meanLitres;
        double regenerations = sums[0];
        double through = Math.max(0, used - sums[4]);
        double removed = Math.max(0, hardness / 1000 * (through - sums[3]));
        double unused = Math.max(0, regenerations * regeneration.capacityGrams() - removed);
        return new YearlyTotals(regenerations, sums[1], regenerations * regeneration.saltGrams(),
                regenerations * regeneration.waterLitres(), through, sums[4], sums[2], sums[3], removed, removed, unused);
    }

    private double[] byNight(WaitingRule rule, Detail detail) {
        double[] sums = new double[SUMS];
        if (use.hasEvenMonths()) {
            Cycles.Rates rates = rates(rule, useFactor, detail);
            sums[0] = Days.PER_YEAR * rates.regenerations();
            sums[1] = Days.PER_YEAR * rates.overrides();
            sums[2] = Days.PER_YEAR * rates.hardDays();
            sums[3] = Days.PER_YEAR * rates.hardLitres();
            return sums;
        }
        Cycles.Rates[] known = new Cycles.Rates[use.factors()];
        for (int i = 0; i < known.length; i++) {
            known[i] = rates(rule, useFactor * use.factor(i), detail);
        }
        for (int month = 0; month < UseModel.MONTHS; month++) {
            Cycles.Rates rates = known[use.factorOfMonth(month)];
            double days = UseModel.DAYS_OF_MONTHS.get(month);
            sums[0] += days * rates.regenerations();
            sums[1] += days * rates.overrides();
            sums[2] += days * rates.hardDays();
            sums[3] += days * rates.hardLitres();
        }
        return sums;
    }

    /** Means of a day; only hard days where nothing else is needed. */
    private Cycles.Rates rates(WaitingRule rule, double factor, Detail detail) {
        if (factor * use.meanAtHome() == 0 && !rule.timed() && rule.longest() == 0) {
            return new Cycles.Rates(0, 0, 0, 0, 1);
        }
        if (LongWait.holds(rule, use, factor)) {
            return LongWait.rates(rule.onDays(factor), use, factor);
        }
        double day = use.meanAtHome();
        if (rule.isClockEveryDays() && detail != Detail.EACH_NIGHT && isOnClockLattice(rule.bedLitres() / factor)) {
            double bed = rule.bedLitres() / factor;
            if (bed > use.mostLitres(rule.longest())) {
                return new Cycles.Rates(1.0 / rule.longest(), 0, 0, 0, 1);
            }
            ClockRates clock = lattices().clockRates();
            return new Cycles.Rates(1.0 / rule.longest(), clock.hardDays(rule.longest(), bed / day),
                    detail == Detail.HARD_DAYS ? 0 : factor * day * clock.hardLitres(rule.longest(), bed / day), 0, 1);
        }
        if (detail == Detail.HARD_DAYS && rule.longest() != 0 && model.cv() >= LatticeDay.LEAST_CV
                && use.hardlyExceeds(rule.bedLitres() / factor, rule.longest())) {
            return new Cycles.Rates(0, 0, 0, 0, 1);
        }
        double call = rule.timed() ? 0 : use.reachedLitres(rule.callLitres() / factor, rule.longest());
        boolean onLattice = (rule.lasting() || detail == Detail.HARD_DAYS) && sharesNights(rule.longest())
                && isOnLattice(call, rule.bedLitres() / factor, rule.longest());
        double spare = rule.bedLitres() / factor - call;
        if (onLattice && detail == Detail.HARD_DAYS) {
            return new Cycles.Rates(0, meterRates(rule.longest()).hardDays(call / day, spare / day), 0, 0, 1);
        }
        Cycles.Rates rates = onLattice
                ? meterRates(rule.longest()).of(call / day, spare / day, detail == Detail.HARD_LITRES)
                : cycles(rule, factor, detail).rates();
        return new Cycles.Rates(rates.regenerations(), rates.hardDays(), factor * day * rates.hardLitres(), rates.overrides(),
                rates.ended());
    }

    /** All cycles of a rule, in mean days at home. */
    private Cycles cycles(WaitingRule rule, double factor, Detail detail) {
        double day = factor * use.meanAtHome();
        if (day == 0) {
            return new AlikeDays(new double[WEEKDAYS], use.leave(), use.comeBack()).cycles(rule);
        }
        return model.cv() < LatticeDay.LEAST_CV
                ? new AlikeDays(lattices().weekdays(), use.leave(), use.comeBack()).cycles(rule.onDays(day))
                : lattices().table().cycles(rule.onDays(day), detail);
    }

    /** Whether most of what is asked of such days can be read from the lattice. */
    static boolean isQuick(UseModel model) {
        return model.cv() >= MeterRates.LEAST_CV && model.cv() <= MeterRates.LARGEST_CV;
    }

    /** Whether it can be read from the lattice: days that scatter neither too little nor too much, and a count of some of them. */
    private boolean isOnLattice(double litres, double bedLitres, int overrideDays) {
        double days = litres / use.busiestMean();
        return isQuick(model) && days >= MeterRates.LEAST_CALL_DAYS
                && days <= (overrideDays == Policy.NO_OVERRIDE ? LongWait.LONG_WAIT_DAYS : MeterRates.MOST_DAYS)
                && (bedLitres >= litres || bedLitres >= MeterRates.LEAST_BED_DAYS * use.busiestMean());
    }

    private boolean isOnClockLattice(double bedLitres) {
        return readsClocksFromLattice() && bedLitres >= MeterRates.LEAST_CALL_DAYS * use.busiestMean();
    }

    /** Whether the nights of a cycle are few enough to be read from the lattice: with absences only under an override. */
    private boolean sharesNights(int overrideDays) {
        return use.leave() == 0 || overrideDays != Policy.NO_OVERRIDE && overrideDays <= MeterRates.MOST_NIGHTS_WITH_ABSENCES;
    }

    private MeterRates meterRates(int overrideDays) {
        return scaled != null ? scaled.meterRates(overrideDays)
                : meterRates.computeIfAbsent(overrideDays, days -> lattices().meterRates(days));
    }

    private Lattices lattices() {
        if (scaled != null) {
            return scaled.lattices();
        }
        if (lattices == null) {
            lattices = Lattices.of(use, steps);
        }
        return lattices;
    }

    private YearlyTotals simulated(Policy policy, double hardness, Regeneration regeneration, Drawing drawing) {
        SimulatedYears years = years(policy, hardness, regeneration, drawing);
        double used = years.spread(year -> year.throughBedLitres() + year.bypassedLitres()).mean();
        double scale = used > 0 ? Days.PER_YEAR * model.meanLitres() / used : 1;
        double litres = scaled == null ? 1 : useFactor;
        double overrides = years.spread(Totals::overrides).mean();
        // Only what the count of the meter starts goes with the litres; nights of the override do not.
        double started = years.spread(Totals::regenerations).mean() - overrides;
        double[] sums = {overrides + scale * started, overrides,
            years.spread(Totals::hardDays).mean(), litres * years.spread(Totals::hardLitres).mean(),
            litres * scale * years.spread(Totals::bypassedLitres).mean()};
        return totals(sums, hardness, regeneration);
    }

    private SimulatedYears years(Policy policy, double hardness, Regeneration regeneration, Drawing drawing) {
        if (scaled != null) {
            // The days of the household, with every volume divided by the same factor.
            return scaled.years(policy.byClock() ? policy : policy.scaledTo(1 / useFactor).withMeter(
                    Policy.nearestMeterLitres(policy.meterVolumeLitres() / useFactor)), hardness * useFactor, regeneration, drawing);
        }
        return drawn.of(policy, hardness, regeneration, policy.startsAtOnce() ? drawing.yearsByDay() : drawing.years());
    }

    /**
     * The chance of each number of hard days of a year, from none on; exact where a cycle has one hard day at most, or where a
     * clock alone ends it; as if no cycle depended on another where only use ends it, in a home that is vacant at times; else from
     * fixed years.
     *
     * @param expected {@link #hardDaysPerYear} or nearly so
     */
    double[] hardDayChances(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration, Drawing drawing,
            double expected) {
        if (policy.startsAtOnce() && expected == 0) {
            return new double[] {1};
        }
        if (!policy.startsAtOnce() && !policy.followsWeekdays()) {
            WaitingRule rule = WaitingRule.of(policy, hardnessMilligramsPerLitre, regeneration.capacityGrams());
            if (use.leave() > 0 && rule.longest() == 0 && rule.lasting()) {
                return HardDays.ofCycles(expected, byNight(rule, Detail.HARD_LITRES)[0]);
            }
            boolean exact = rule.timed() ? use.leave() == 0 : rule.lasting();
            boolean counted = model.monthFactors().stream().map(month -> useFactor * month)
                    .noneMatch(factor -> LongWait.holds(rule, use, factor) || factor == 0 && rule.longest() == 0);
            if (exact && counted) {
                Map<Double, Cycles> cycles = new HashMap<>();
                model.monthFactors().forEach(month -> cycles.computeIfAbsent(month, m -> cycles(rule, useFactor * m, Detail.EACH_NIGHT)));
                return YearOfCycles.hardDayChances(model.monthFactors().stream().map(cycles::get).toList(), use.means(), rule.timed(),
                        expected);
            }
        }
        SimulatedYears years = years(policy, hardnessMilligramsPerLitre, regeneration, drawing);
        double[] chances = new double[Days.PER_YEAR + 1];
        for (int year = 0; year < years.count(); year++) {
            chances[years.year(year).hardDays()] += 1.0 / years.count();
        }
        return chances;
    }
}
