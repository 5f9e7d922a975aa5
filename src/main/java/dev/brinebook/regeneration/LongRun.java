package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.StopSign;
import dev.brinebook.household.Days;
import dev.brinebook.household.DrawnYears;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.regeneration.RenewalTable.Detail;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.hipparchus.special.Gamma;

/**
 * What a policy does in a household in the long run: no year is drawn, so that nothing depends on luck.
 *
 * <p>Policies that wait for the night are evaluated on a {@link RenewalTable}, each month with its own factor; meters that start
 * at once by {@link ByDay}; a reserve that follows the last weeks, and a meter by day whose override often acts, by
 * {@value #SIMULATED_YEARS} fixed years.
 *
 * <p>Made once for a household and used by one thread; what is worked out for one policy serves the next.
 */
public final class LongRun {

    private static final int STEPS = 10;
    private static final int STEPS_OF_WIDE_DAYS = 20;
    private static final double WIDE_CV = 0.6;
    /** A delayed meter without override that waits so many mean days no longer knows how its cycle began. */
    private static final double LONG_WAIT_DAYS = 60;
    private static final double LEAST_CV_OF_LONG_WAIT = 0.15;
    private static final double LONGEST_WAIT_DAYS = 400;
    /** Chance above which an override is more than an exception. */
    private static final double RARE_OVERRIDE = 1e-4;
    static final int SIMULATED_YEARS = 400;
    /** Under an override that often acts the years hardly differ. */
    static final int SIMULATED_YEARS_BY_DAY = 40;
    private static final long SIMULATION_SEED = 20_260_101;
    private static final LocalDate SIMULATION_START = LocalDate.of(2001, 1, 1);
    private static final int WEEKDAYS = 7;

    private final UseModel model;
    private final double[] means;
    private final double leave;
    private final double comeBack;
    private final int steps;
    private final double useFactor;
    /** The household whose use this one has so many times, and whose table serves both; none but itself where they are one. */
    private final LongRun scaled;
    private RenewalTable table;
    /** Fixed years by how many there are: each kind of policy has its own, so that the order of questions moves no figure. */
    private final Map<Integer, DrawnYears> drawn = new HashMap<>();

    private LongRun(UseModel model, int steps, double useFactor, LongRun scaled) {
        this.model = model;
        this.steps = steps;
        this.useFactor = Guard.notNegative(useFactor, "useFactor");
        this.scaled = scaled;
        means = weekdays(model.means());
        var chain = model.occupancy().longRun();
        leave = chain.map(Occupancy.Chain::leavePerDay).orElse(0.0);
        comeBack = chain.map(Occupancy.Chain::returnPerDay).orElse(1.0);
    }

    /** The long run of a household. */
    public static LongRun of(UseModel model) {
        return new LongRun(model, model.cv() > WIDE_CV ? STEPS_OF_WIDE_DAYS : STEPS, 1, null);
    }

    /** The same with another number of lattice points in a mean day. */
    LongRun withSteps(int other) {
        return new LongRun(model, other, useFactor, null);
    }

    /** The same household where every day uses so many times as much. */
    public LongRun times(double factor) {
        return factor == 1 ? this : new LongRun(model, steps, useFactor * factor, scaled == null ? this : scaled);
    }

    int steps() {
        return steps;
    }

    private static double[] weekdays(WeekdayMeans means) {
        return Arrays.stream(DayOfWeek.values()).mapToDouble(means::litres).toArray();
    }

    /** How the days come about. */
    public UseModel model() {
        return model;
    }

    /** Mean use of a day, vacant ones included. */
    public double meanLitres() {
        return useFactor * model.meanLitres();
    }

    /** Litres over which the chance of a day of more use falls by the factor e, far out: the scale of its gamma distribution. */
    double fallOffLitres() {
        return useFactor * Arrays.stream(means).max().orElseThrow() * model.cv() * model.cv();
    }

    /**
     * Expected totals of a year.
     *
     * @param hardnessMilligramsPerLitre compensated hardness as CaCO3
     * @param regeneration what each regeneration restores and uses
     */
    public YearlyTotals year(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        StopSign.obey();
        Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre");
        if (policy instanceof MeteredByHistory || policy.startsAtOnce() && overrideActs(policy)) {
            return simulated(policy, hardnessMilligramsPerLitre, regeneration);
        }
        double[] sums = policy.startsAtOnce() ? byDay(policy, hardnessMilligramsPerLitre, regeneration)
                : byNight(WaitingRule.of(policy, hardnessMilligramsPerLitre, regeneration.capacityGrams()), Detail.HARD_LITRES);
        return totals(sums, hardnessMilligramsPerLitre, regeneration);
    }

    /** Expected hard days of a year alone. */
    public double hardDaysPerYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        if (policy.startsAtOnce()) {
            // A bed that outlasts its meter is never used up; an override only makes that rarer.
            return byDay(policy, hardnessMilligramsPerLitre, regeneration)[2];
        }
        return policy instanceof MeteredByHistory ? year(policy, hardnessMilligramsPerLitre, regeneration).hardDays()
                : hardDays(WaitingRule.of(policy, Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre"),
                        regeneration.capacityGrams()));
    }

    /** The same of a delayed meter, by what its count and its bed come to in litres. */
    double delayedHardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        return hardDays(WaitingRule.delayed(meterLitres, callLitres, bedLitres, overrideDays));
    }

    private double hardDays(WaitingRule rule) {
        StopSign.obey();
        return byNight(rule, Detail.HARD_DAYS)[2];
    }

    /** Regenerations, overrides, hard days, hard litres and bypassed litres of a year. */
    private YearlyTotals totals(double[] sums, double hardness, Regeneration regeneration) {
        double use = Days.PER_YEAR * meanLitres();
        double regenerations = sums[0];
        double through = Math.max(0, use - sums[4]);
        double removed = Math.max(0, hardness / 1000 * (through - sums[3]));
        double unused = Math.max(0, regenerations * regeneration.capacityGrams() - removed);
        return new YearlyTotals(regenerations, sums[1], regenerations * regeneration.saltGrams(),
                regenerations * regeneration.waterLitres(), through, sums[4], sums[2], sums[3], removed, removed, unused);
    }

    private double[] byNight(WaitingRule rule, Detail detail) {
        double[] sums = new double[5];
        Map<Double, Cycles.Rates> known = new HashMap<>();
        for (int month = 0; month < UseModel.MONTHS; month++) {
            double factor = useFactor * model.monthFactors().get(month);
            Cycles.Rates rates = known.computeIfAbsent(factor, f -> rates(rule, f, detail));
            double days = UseModel.DAYS_OF_MONTHS.get(month);
            sums[0] += days * rates.regenerations();
            sums[1] += days * rates.overrides();
            sums[2] += days * rates.hardDays();
            sums[3] += days * rates.hardLitres();
        }
        return sums;
    }

    private Cycles.Rates rates(WaitingRule rule, double factor, Detail detail) {
        double use = factor * Arrays.stream(means).sum();
        boolean always = rule.timed();
        if (use == 0 && !always && rule.longest() == 0) {
            return new Cycles.Rates(0, 0, 0, 0, 1);
        }
        if (waitsLong(rule, factor)) {
            return longWait(rule.onDays(factor), factor);
        }
        Cycles.Rates rates = cycles(rule, factor, detail).rates();
        return new Cycles.Rates(rates.regenerations(), rates.hardDays(), factor * rates.hardLitres(), rates.overrides(),
                rates.ended());
    }

    private Cycles cycles(WaitingRule rule, double factor, Detail detail) {
        boolean unused = factor == 0 || Arrays.stream(means).sum() == 0;
        if (unused || model.cv() < LatticeDay.LEAST_CV) {
            return new AlikeDays(unused ? new double[WEEKDAYS] : means, leave, comeBack).cycles(unused ? rule
                    : rule.onDays(factor));
        }
        return table().cycles(rule.onDays(factor), detail);
    }

    private RenewalTable table() {
        if (scaled != null) {
            return scaled.table();
        }
        if (table == null) {
            table = new RenewalTable(means, model.cv(), leave, comeBack, steps);
        }
        return table;
    }

    private boolean waitsLong(WaitingRule rule, double factor) {
        if (rule.timed() || rule.longest() != 0) {
            return false;
        }
        double days = rule.callLitres() / (factor * Arrays.stream(means).average().orElseThrow());
        return days > LONGEST_WAIT_DAYS || days > LONG_WAIT_DAYS && model.cv() > LEAST_CV_OF_LONG_WAIT;
    }

    /**
     * A wait so long that the count calls at any point of a day's use: what is drawn beyond it is the overshoot of a renewal
     * process.
     * <pre>regenerations = use / (T + Σ E X² / (2 Σ m)),   hard days = regenerations Σ M(B - T) / Σ m</pre>
     * Source: [FELLER] the overshoot in the limit.
     */
    private Cycles.Rates longWait(WaitingRule rule, double factor) {
        double sum = 0;
        double overshoot = 0;
        double hard = 0;
        double litres = 0;
        double spare = Math.max(0, rule.bedLitres() - rule.callLitres());
        for (double mean : means) {
            sum += mean;
            overshoot += GammaDay.halfSquareExcess(mean, model.cv(), 0);
            if (spare < Double.POSITIVE_INFINITY) {
                hard += GammaDay.excessLitres(mean, model.cv(), spare);
                litres += GammaDay.halfSquareExcess(mean, model.cv(), spare);
            }
        }
        double perDay = model.occupiedShare() * sum / WEEKDAYS;
        double regenerations = perDay / (rule.callLitres() + overshoot / sum);
        double late = Math.max(0, rule.callLitres() - rule.bedLitres());
        double days = regenerations * hard / sum + (late > 0 ? regenerations * late * WEEKDAYS / sum : 0);
        return new Cycles.Rates(regenerations, days, factor * regenerations * (litres / sum + late), 0, 1);
    }

    private double[] byDay(Policy policy, double hardness, Regeneration regeneration) {
        double[] sums = new double[5];
        double meter = policy.meterVolumeLitres();
        double bed = hardness > 0 ? 1000 * regeneration.capacityGrams() / hardness : Double.POSITIVE_INFINITY;
        Map<Double, Double> hardShares = new HashMap<>();
        double atOnce = policy instanceof TwinAlternating ? 0 : ByDay.bypassLitres(regeneration.minutes(), means, model.cv());
        for (int month = 0; month < UseModel.MONTHS; month++) {
            double factor = useFactor * model.monthFactors().get(month);
            double days = UseModel.DAYS_OF_MONTHS.get(month);
            double bypass = factor * atOnce;
            double use = days * factor * model.occupiedShare() * Arrays.stream(means).average().orElseThrow();
            double regenerations = use / (meter + bypass);
            sums[0] += regenerations;
            sums[4] += regenerations * bypass;
            if (meter > bed * (1 + Policy.ROUNDING_SHARE)) {
                sums[2] += days * model.occupiedShare() * hardShares.computeIfAbsent(factor, f -> hardShareByDay(f, meter, bed,
                        f * atOnce));
                sums[3] += regenerations * (meter - bed);
            }
        }
        return sums;
    }

    /** Share of the days at home on which the bed of a meter by day is used up. */
    private double hardShareByDay(double factor, double meter, double bed, double bypass) {
        double share = 0;
        double mean = 0;
        double part = 0;
        for (double weekday : means) {
            if (weekday != mean) {
                mean = weekday;
                part = meter - bed + factor * mean - GammaDay.excessLitres(factor * mean, model.cv(), bed + bypass);
            }
            share += factor * mean > 0 ? part / (meter + bypass) / WEEKDAYS : 0;
        }
        return share;
    }

    /** Whether an override ends more than a few of the waits for a meter: what is drawn till then is taken as gamma. */
    private boolean overrideActs(Policy policy) {
        int days = policy.overrideDays();
        if (days == Policy.NO_OVERRIDE) {
            return false;
        }
        double share = model.occupiedShare();
        double mean = Arrays.stream(means).average().orElseThrow()
                * useFactor * model.monthFactors().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        if (mean == 0) {
            return true;
        }
        double spells = leave > 0 ? Math.max(1, (2 - leave - comeBack) / (leave + comeBack)) : 1;
        double variance = days * share * mean * mean * (model.cv() * model.cv() + (1 - share) * spells);
        double litres = days * share * mean;
        if (variance == 0) {
            return litres < policy.meterVolumeLitres();
        }
        return Gamma.regularizedGammaP(litres * litres / variance, policy.meterVolumeLitres() * litres / variance)
                > RARE_OVERRIDE;
    }

    private YearlyTotals simulated(Policy policy, double hardness, Regeneration regeneration) {
        SimulatedYears years = years(policy, hardness, regeneration);
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

    private SimulatedYears years(Policy policy, double hardness, Regeneration regeneration) {
        if (scaled != null) {
            // The days of the household with everything that is counted in litres so much smaller.
            return scaled.years(policy.byClock() ? policy : policy.scaledTo(1 / useFactor).withMeter(
                    Policy.nearestMeterLitres(policy.meterVolumeLitres() / useFactor)), hardness * useFactor, regeneration);
        }
        int years = policy.startsAtOnce() ? SIMULATED_YEARS_BY_DAY : SIMULATED_YEARS;
        DrawnYears days = drawn.computeIfAbsent(years, count -> new DrawnYears(new UseModel(model.means(), model.variation(),
                model.monthFactors(), leave > 0 ? new Occupancy.Chain(leave, comeBack) : Occupancy.ALWAYS), SIMULATION_START, count,
                SIMULATION_SEED));
        return SimulatedYears.of(days, hardness, regeneration, policy);
    }

    /**
     * Hard days of a year with their spread, exact where a cycle has one hard day at most, or where a clock alone ends it; else
     * from {@value #SIMULATED_YEARS} fixed years.
     */
    public HardDays hardDays(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        double expected = hardDaysPerYear(policy, hardnessMilligramsPerLitre, regeneration);
        if (policy.startsAtOnce() && expected == 0) {
            return HardDays.NONE;
        }
        if (!policy.startsAtOnce() && !(policy instanceof MeteredByHistory)) {
            WaitingRule rule = WaitingRule.of(policy, hardnessMilligramsPerLitre, regeneration.capacityGrams());
            boolean exact = rule.timed() ? leave == 0 : rule.lasting();
            boolean counted = model.monthFactors().stream().map(month -> useFactor * month)
                    .noneMatch(factor -> waitsLong(rule, factor) || factor == 0 && rule.longest() == 0);
            if (exact && counted) {
                Map<Double, Cycles> cycles = new HashMap<>();
                model.monthFactors().forEach(month -> cycles.computeIfAbsent(month, m -> cycles(rule, useFactor * m, Detail.EACH_NIGHT)));
                return HardDays.of(expected, YearOfCycles.hardDayChances(
                        model.monthFactors().stream().map(cycles::get).toList(), means, rule.timed(), expected));
            }
        }
        SimulatedYears years = years(policy, hardnessMilligramsPerLitre, regeneration);
        double[] chances = new double[Days.PER_YEAR + 1];
        for (int year = 0; year < years.count(); year++) {
            chances[years.year(year).hardDays()] += 1.0 / years.count();
        }
        return HardDays.of(expected, chances);
    }
}
