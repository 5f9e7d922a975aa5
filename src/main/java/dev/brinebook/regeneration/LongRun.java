// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What a policy does in a household in the long run, as homes change: the mean over the levels of use that the home may have, and
 * over the scatters. No year is simulated, so nothing depends on chance.
 *
 * <pre>E = Σ w(i) v(j) E(q(i) use, scatter CV(j)),   q(i) = exp(s z(i)) / Σ w exp(s z),   CV(j) = CV exp(c y(j))</pre>
 *
 * <p>s, c spreads of {@link UseChange}; z, w seven Gauss-Hermite nodes; y, v three. For a clock the scatter is that of sums of
 * days that follow each other, {@link UseChange#scatterOfSums}, and the spread {@link UseChange#levelSpreadOfSums}.
 * Validity: as {@link SteadyRun}.
 * Source: [DAIAD] how homes change; [ABRAMOWITZ-STEGUN] 25.4.46 the nodes.
 * Deviation: where the level wanders, months are treated as four seasons ({@link UseModel#withSeasonsOfMonths}); days that scatter
 * less than {@link MeterRates#LEAST_CV} or more than {@link MeterRates#LARGEST_CV} take one scatter, of
 * {@link LatticeDay#LEAST_CV} at least, the latter three levels as well; meters that start at once, and rules of the same
 * weekday, which need simulated years, take the middle scatter.
 *
 * <p>Created once per household; not thread-safe. Intermediate results of one policy are cached for the next.
 */
public final class LongRun {

    /** Gauss-Hermite nodes for the normal distribution, and their weights. */
    static final double[] NODES = {3.750439717725742, 2.366759410734541, 1.154405394739968, 0, -1.154405394739968,
        -2.366759410734541, -3.750439717725742};
    static final double[] WEIGHTS = {0.000548268855972217, 0.0307571239675865, 0.2401231786050127, 16 / 35.0, 0.2401231786050127,
        0.0307571239675865, 0.000548268855972217};
    /** The same of third order: the middle, and to both sides of it. */
    private static final double OUTER_NODE = Math.sqrt(3);
    private static final double OUTER_WEIGHT = 1 / 6.0;
    private static final double[] OUTER_NODES = {OUTER_NODE, 0, -OUTER_NODE};
    private static final double[] OUTER_WEIGHTS = {OUTER_WEIGHT, 1 - 2 * OUTER_WEIGHT, OUTER_WEIGHT};
    private static final double[] ONE_LEVEL = {1};

    /** What is asked of a policy. */
    private record Asked(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
    }

    private final UseModel model;
    private final HomeRates.Shape shape;
    private final List<HomeState> states;
    private final double meanLitres;
    private final DelayedMeters meters;
    private final FixedClocks clocks;
    private final List<HomeState> ofUsualScatter;
    /** The same questions come again, from each part of an answer. */
    private final Map<Asked, YearlyTotals> years = new HashMap<>();
    private final Map<Asked, Double> hardDaysPerYear = new HashMap<>();
    private final Map<Asked, HardDays> hardDays = new HashMap<>();
    private final Map<SmallestReserve.Asked, OptionalResult> reserves = new HashMap<>();
    private final Map<Double, LongRun> multiples = new HashMap<>();
    private LongRun ifItStays;

    private LongRun(UseModel model, HomeRates.Shape shape, List<HomeState> states) {
        this.model = model;
        this.shape = shape;
        this.states = states;
        meanLitres = mean(states, state -> state.days().meanLitres());
        meters = new DelayedMeters(shape, states, meanLitres);
        clocks = new FixedClocks(shape, states, meanLitres);
        double share = states.stream().filter(HomeState::isUsualScatter).mapToDouble(HomeState::weight).sum();
        ofUsualScatter = states.stream().filter(HomeState::isUsualScatter).map(state -> state.alone(share)).toList();
    }

    /** The long run of a household. */
    public static LongRun of(UseModel model) {
        UseChange change = model.change();
        List<HomeState> states = new ArrayList<>();
        boolean whole = SteadyRun.isQuick(model);
        boolean one = change.scatterSpread() == 0 || !whole;
        boolean few = model.cv() > MeterRates.LARGEST_CV;
        for (int side = one ? 0 : -1; side <= (one ? 0 : 1); side++) {
            double scatter = Math.max(change.levelSpread() == 0 ? 0 : LatticeDay.LEAST_CV,
                    model.cv() * StrictMath.exp(side * OUTER_NODE * change.scatterSpread()));
            double weight = one ? 1 : side == 0 ? 1 - 2 * OUTER_WEIGHT : OUTER_WEIGHT;
            UseModel seen = change.levelSpread() == 0 ? model : model.withSeasonsOfMonths();
            SteadyRun days = one ? SteadyRun.of(scattering(seen, scatter)) : SteadyRun.coarse(scattering(seen, scatter));
            double ofSums = scatter * change.scatterOfSums();
            SteadyRun sums = change.dayCorrelation() == 0 ? days : SteadyRun.coarse(scattering(seen, ofSums));
            double[] weights = few ? OUTER_WEIGHTS : WEIGHTS;
            double[] factors = levels(change.levelSpread(), few ? OUTER_NODES : NODES, weights);
            double[] ofSumsFactors = levels(change.levelSpreadOfSums(), few ? OUTER_NODES : NODES, weights);
            double below = weight;
            for (int i = 0; i < factors.length; i++) {
                double share = factors.length == 1 ? weight : weight * weights[i];
                below = i == factors.length - 1 ? 0 : below - share;
                states.add(new HomeState(share, below, side == 0, i == factors.length / 2,
                        factors[i], ofSumsFactors[i], days.times(factors[i]), sums.times(ofSumsFactors[i])));
            }
        }
        return new LongRun(model, HomeRates.Shape.of(model, HomeRates.Part.WHOLE), states);
    }

    private static UseModel scattering(UseModel model, double cv) {
        return new UseModel(model.means(), cv == model.cv() ? model.variation()
                : DayVariation.ofCv(Math.min(DayVariation.MAX_CV, cv)), model.monthFactors(), model.occupancy());
    }

    /** Chance of a level of {@link #levels}. */
    static double weight(int level, int levels) {
        return levels == 1 ? 1 : WEIGHTS[level];
    }

    /** Use at each node of the level over the mean use; one where it does not wander. */
    static double[] levels(double spread) {
        return levels(spread, NODES, WEIGHTS);
    }

    private static double[] levels(double spread, double[] nodes, double[] weights) {
        if (spread == 0) {
            return ONE_LEVEL;
        }
        double[] factors = new double[nodes.length];
        double mean = 0;
        for (int i = 0; i < nodes.length; i++) {
            factors[i] = StrictMath.exp(spread * nodes[i]);
            mean += weights[i] * factors[i];
        }
        for (int i = 0; i < nodes.length; i++) {
            factors[i] /= mean;
        }
        return factors;
    }

    /** The same household with the use of every day multiplied by {@code factor}. */
    public LongRun times(double factor) {
        return factor == 1 ? this : multiples.computeIfAbsent(factor, times ->
                new LongRun(model, shape, states.stream().map(state -> state.times(times)).toList()));
    }

    /** The same household while its level of use stays constant. */
    public LongRun ifItStays() {
        if (ifItStays == null) {
            double share = states.stream().filter(HomeState::isUsualLevel).mapToDouble(HomeState::weight).sum();
            ifItStays = new LongRun(model.with(model.change().withoutLevel()), HomeRates.Shape.of(model, HomeRates.Part.USUAL_LEVEL),
                    states.stream().filter(HomeState::isUsualLevel).map(state -> state.alone(share).atMean()).toList());
        }
        return ifItStays;
    }

    /**
     * A part of the time with a constant level of use.
     *
     * @param level use over its mean
     * @param share of the time
     */
    public record Season(double level, double share) {
    }

    /** The levels that the home has in turn: three, or one where it stays as it is. */
    public List<Season> seasons() {
        double spread = model.change().levelSpread();
        if (spread == 0) {
            return List.of(new Season(1, 1));
        }
        double[] levels = levels(spread, OUTER_NODES, OUTER_WEIGHTS);
        return IntStream.range(0, levels.length).mapToObj(i -> new Season(levels[i], OUTER_WEIGHTS[i])).toList();
    }

    /** How the days come about. */
    public UseModel model() {
        return model;
    }

    /** Mean use of a day, vacant ones included. */
    public double meanLitres() {
        return meanLitres;
    }

    /** Litres over which the chance of a day of more use falls by the factor e, far out: the scale of its gamma distribution. */
    double fallOffLitres() {
        return mean(ofUsualScatter, state -> state.days().fallOffLitres()) * (1 + 2 * model.change().levelSpread());
    }

    private static double mean(List<HomeState> states, ToDoubleFunction<HomeState> value) {
        double sum = 0;
        for (HomeState state : states) {
            sum += state.weight() * value.applyAsDouble(state);
        }
        return sum;
    }

    private static YearlyTotals meanYear(List<HomeState> states, Function<HomeState, YearlyTotals> year) {
        double[] weights = new double[states.size()];
        List<YearlyTotals> years = new ArrayList<>(weights.length);
        for (HomeState state : states) {
            weights[years.size()] = state.weight();
            years.add(year.apply(state));
        }
        return YearlyTotals.mean(weights, years);
    }

    /** A reserve, searched for when it is first asked. */
    OptionalResult smallestReserve(SmallestReserve.Asked asked, Function<SmallestReserve.Asked, OptionalResult> search) {
        return reserves.computeIfAbsent(asked, search);
    }

    /** The states in which a policy is evaluated. */
    private List<HomeState> states(Policy policy) {
        return policy.followsWeekdays() || policy.startsAtOnce() ? ofUsualScatter : states;
    }

    /**
     * Expected totals of a year.
     *
     * @param hardnessMilligramsPerLitre compensated hardness as CaCO3
     * @param regeneration what each regeneration restores and uses
     */
    public YearlyTotals year(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return years.computeIfAbsent(new Asked(policy, hardnessMilligramsPerLitre, regeneration), asked ->
                meters.reads(policy, hardnessMilligramsPerLitre, regeneration)
                        ? meters.year(policy, hardnessMilligramsPerLitre, regeneration)
                        : clocks.reads(policy, hardnessMilligramsPerLitre, regeneration)
                        ? clocks.year((ClockEveryDays) policy, hardnessMilligramsPerLitre, regeneration)
                        : summedYear(policy, hardnessMilligramsPerLitre, regeneration));
    }

    /** The same, summed over the states. */
    YearlyTotals summedYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return meanYear(states(policy), state -> state.of(policy).year(policy, hardnessMilligramsPerLitre, regeneration, yearsOfEach()));
    }

    /** Expected hard days of a year alone. */
    public double hardDaysPerYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        if (clocks.reads(policy, hardnessMilligramsPerLitre, regeneration)) {
            return year(policy, hardnessMilligramsPerLitre, regeneration).hardDays();
        }
        return hardDaysPerYear.computeIfAbsent(new Asked(policy, hardnessMilligramsPerLitre, regeneration), asked ->
                meters.reads(policy, hardnessMilligramsPerLitre, regeneration)
                        ? meters.hardDays(policy, hardnessMilligramsPerLitre, regeneration)
                        : mean(states(policy), state -> state.of(policy).hardDaysPerYear(policy, hardnessMilligramsPerLitre,
                                regeneration, yearsOfEach())));
    }

    /** The same of a delayed meter, by what its count and its bed come to in litres. */
    double delayedHardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        return meters.hardDays(meterLitres, callLitres, bedLitres, overrideDays);
    }

    /** Expected totals of a year of a meter whose reserve, given for the mean level of use, follows the level. */
    public YearlyTotals yearOfReserveThatFollowsUse(MeteredDelayed meter, double hardnessMilligramsPerLitre,
            Regeneration regeneration) {
        return meanYear(states, state -> state.days().year(following(meter, state.level()), hardnessMilligramsPerLitre, regeneration,
                yearsOfEach()));
    }

    /** Hard days of such a year with all use multiplied. */
    double hardDaysOfReserveThatFollowsUse(MeteredDelayed meter, double hardnessMilligramsPerLitre, Regeneration regeneration,
            double times) {
        return mean(states, state -> state.days().times(times).hardDaysPerYear(following(meter, state.level()),
                hardnessMilligramsPerLitre, regeneration, yearsOfEach()));
    }

    private static MeteredDelayed following(MeteredDelayed meter, double level) {
        return new MeteredDelayed(meter.meterVolumeLitres(), Math.min(meter.meterVolumeLitres(), level * meter.reserveLitres()),
                meter.overrideDays());
    }

    /**
     * Hard days of a year with their spread: each year has one level, and the middle scatter. At the outer levels, a year in
     * sixteen, hard days are counted as if none depended on another.
     */
    public HardDays hardDays(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return hardDays.computeIfAbsent(new Asked(policy, hardnessMilligramsPerLitre, regeneration), this::spread);
    }

    private HardDays spread(Asked asked) {
        Policy policy = asked.policy();
        double hardnessMilligramsPerLitre = asked.hardnessMilligramsPerLitre();
        Regeneration regeneration = asked.regeneration();
        double expected = hardDaysPerYear(policy, hardnessMilligramsPerLitre, regeneration);
        if (expected == 0) {
            return HardDays.NONE;
        }
        double[] chances = new double[Days.PER_YEAR + 1];
        for (HomeState state : ofUsualScatter) {
            double mean = hardDaysPerYear(state, asked);
            double[] of = state.isOuterLevel() ? HardDays.independent(mean)
                    : state.of(policy).hardDayChances(policy, hardnessMilligramsPerLitre, regeneration, yearsOfEach(), mean);
            double sum = 0;
            for (double chance : of) {
                sum += chance;
            }
            for (int days = 0; days < of.length; days++) {
                chances[days] += state.weight() * of[days] / sum;
            }
        }
        return HardDays.of(expected, ofUsualScatter.size() == 1 ? expected
                : ifItStays().hardDaysPerYear(policy, hardnessMilligramsPerLitre, regeneration), chances);
    }

    private double hardDaysPerYear(HomeState level, Asked asked) {
        DelayedMeters atLevel = DelayedMeters.atLevel(shape, level);
        return atLevel.reads(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration)
                ? atLevel.hardDays(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration)
                : level.of(asked.policy).hardDaysPerYear(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration, yearsOfEach());
    }

    /** Fewer simulated years per level where there are several levels. */
    private Drawing yearsOfEach() {
        return ofUsualScatter.size() > 1 ? Drawing.OF_SEVERAL_LEVELS : Drawing.OF_ONE_LEVEL;
    }
}
