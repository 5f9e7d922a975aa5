// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.Days;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What a policy does in a household in the long run, as homes change: the mean over the levels of use that the home may have, and
 * over the scatters. No year is simulated, so nothing depends on chance.
 *
 * <pre>E = Σ w(i) v(j) E(q(i) use, scatter CV(j)),   CV(j) = CV exp(c y(j))</pre>
 *
 * <p>q, w the {@link Levels} and their weights; c spread of {@link UseChange}; y, v three Gauss-Hermite
 * nodes. For a clock the scatter is that of sums of days that follow each other, {@link UseChange#scatterOfSums}, and the spread
 * {@link UseChange#levelSpreadOfSums}.
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

    private static final double[] NONE = {1};

    /** What is asked of a policy. */
    private record Asked(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
    }

    private final UseModel model;
    private final HomeRates.Shape shape;
    private final HomeStates seenByMeters;
    /** Made when a clock is first asked about. */
    private final Supplier<HomeStates> toSeeByClocks;
    private HomeStates seenByClocks;
    /** Made when the years of a meter are first asked about. */
    private final Supplier<HomeStates> toSeeByYears;
    private HomeStates seenByYears;
    private final double meanLitres;
    private final DelayedMeters meters;
    private FixedClocks clocks;
    /** The same questions come again, from each part of an answer. */
    private final Map<Asked, YearlyTotals> years = new HashMap<>();
    private final Map<Asked, Double> hardDaysPerYear = new HashMap<>();
    private final Map<Asked, HardDays> hardDays = new HashMap<>();
    private final Map<SmallestReserve.Asked, OptionalResult> reserves = new HashMap<>();
    private final Map<Double, LongRun> multiples = new HashMap<>();
    private LongRun ifItStays;

    private LongRun(UseModel model, HomeRates.Shape shape, HomeStates seenByMeters, Supplier<HomeStates> toSeeByClocks,
            Supplier<HomeStates> toSeeByYears) {
        this.model = model;
        this.shape = shape;
        this.seenByMeters = seenByMeters;
        this.toSeeByClocks = toSeeByClocks;
        this.toSeeByYears = toSeeByYears;
        meanLitres = seenByMeters.mean(state -> state.days().meanLitres());
        meters = new DelayedMeters(shape, seenByMeters.all(), meanLitres);
    }

    /** The long run of a household. */
    public static LongRun of(UseModel model) {
        return new LongRun(model, HomeRates.Shape.of(model, HomeRates.Part.WHOLE), HomeStates.ofMeters(model),
                () -> HomeStates.ofClocks(model), () -> HomeStates.ofYears(model));
    }

    private HomeStates seenByClocks() {
        if (seenByClocks == null) {
            seenByClocks = toSeeByClocks.get();
            clocks = new FixedClocks(shape, seenByClocks.all(), meanLitres);
        }
        return seenByClocks;
    }

    private HomeStates seenByYears() {
        if (seenByYears == null) {
            seenByYears = toSeeByYears.get();
        }
        return seenByYears;
    }

    /** The same household with the use of every day multiplied by {@code factor}. */
    public LongRun times(double factor) {
        return factor == 1 ? this : multiples.computeIfAbsent(factor, times ->
                new LongRun(model, shape, seenByMeters.times(times), () -> seenByClocks().times(times),
                        () -> seenByYears().times(times)));
    }

    /** The same household while its level of use stays constant. */
    public LongRun ifItStays() {
        if (ifItStays == null) {
            ifItStays = new LongRun(model.with(model.change().withoutLevel()), HomeRates.Shape.of(model, HomeRates.Part.USUAL_LEVEL),
                    seenByMeters.atUsualLevel(), () -> seenByClocks().atUsualLevel(),
                    () -> seenByYears().atUsualLevel());
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
        double[] levels = Levels.FEW.factors(spread);
        return IntStream.range(0, levels.length).mapToObj(i -> new Season(levels[i], Levels.FEW.weight(i))).toList();
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
        return HomeStates.mean(seenByMeters.ofUsualScatter(), state -> state.days().fallOffLitres())
                * (1 + 2 * model.change().levelSpread());
    }

    /** A reserve, searched for when it is first asked. */
    OptionalResult smallestReserve(SmallestReserve.Asked asked, Function<SmallestReserve.Asked, OptionalResult> search) {
        return reserves.computeIfAbsent(asked, search);
    }

    private HomeStates seenBy(Policy policy) {
        return policy.byClock() ? seenByClocks() : seenByMeters;
    }

    private List<HomeState> ofUsualScatter(Policy policy) {
        return seenBy(policy).ofUsualScatter();
    }

    /** The clocks of the home, if a policy is one that is read from their lattice. */
    private Optional<FixedClocks> clocks(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        if (!policy.byClock()) {
            return Optional.empty();
        }
        seenByClocks();
        return Optional.of(clocks).filter(of -> of.reads(policy, hardnessMilligramsPerLitre, regeneration));
    }

    /** The states in which a policy is evaluated. */
    private List<HomeState> states(Policy policy) {
        return policy.followsWeekdays() || policy.startsAtOnce() ? ofUsualScatter(policy) : seenBy(policy).all();
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
                        : clocks(policy, hardnessMilligramsPerLitre, regeneration)
                        .map(of -> of.year((ClockEveryDays) policy, hardnessMilligramsPerLitre, regeneration))
                        .orElseGet(() -> summedYear(policy, hardnessMilligramsPerLitre, regeneration)));
    }

    /** The same, summed over the states. */
    YearlyTotals summedYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return HomeStates.meanYear(states(policy), state ->
                state.days().year(policy, hardnessMilligramsPerLitre, regeneration, yearsOfEach()));
    }

    /** Expected hard days of a year alone. */
    public double hardDaysPerYear(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        if (clocks(policy, hardnessMilligramsPerLitre, regeneration).isPresent()) {
            return year(policy, hardnessMilligramsPerLitre, regeneration).hardDays();
        }
        return hardDaysPerYear.computeIfAbsent(new Asked(policy, hardnessMilligramsPerLitre, regeneration), asked ->
                meters.reads(policy, hardnessMilligramsPerLitre, regeneration)
                        ? meters.hardDays(policy, hardnessMilligramsPerLitre, regeneration)
                        : HomeStates.mean(states(policy), state -> state.days().hardDaysPerYear(policy, hardnessMilligramsPerLitre,
                                regeneration, yearsOfEach())));
    }

    /** The same of a delayed meter, by what its count and its bed come to in litres. */
    double delayedHardDays(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        return meters.hardDays(meterLitres, callLitres, bedLitres, overrideDays);
    }

    /** Expected totals of a year of a meter whose reserve, given for the mean level of use, follows the level. */
    public YearlyTotals yearOfReserveThatFollowsUse(MeteredDelayed meter, double hardnessMilligramsPerLitre,
            Regeneration regeneration) {
        return HomeStates.meanYear(seenByMeters.all(), state -> state.days().year(following(meter, state.level()),
                hardnessMilligramsPerLitre, regeneration, yearsOfEach()));
    }

    /** Hard days of such a year with all use multiplied. */
    double hardDaysOfReserveThatFollowsUse(MeteredDelayed meter, double hardnessMilligramsPerLitre, Regeneration regeneration,
            double times) {
        return seenByMeters.mean(state -> state.days().times(times).hardDaysPerYear(following(meter, state.level()),
                hardnessMilligramsPerLitre, regeneration, yearsOfEach()));
    }

    private static MeteredDelayed following(MeteredDelayed meter, double level) {
        return new MeteredDelayed(meter.meterVolumeLitres(), Math.min(meter.meterVolumeLitres(), level * meter.reserveLitres()),
                meter.overrideDays());
    }

    /**
     * Hard days of a year with their spread: each year has one level and one scatter. At the outer levels of a clock, a year in
     * sixteen, and its outer scatters, hard days are counted as if none depended on another; those of a meter whose level wanders as if
     * no cycle depended on another.
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
        List<HomeState> states = statesOfYears(policy);
        boolean none = false;
        for (HomeState state : states) {
            double mean = none ? 0 : hardDaysPerYear(state, asked);
            none = state.weightBelow() > 0 && state.hasNoneBelow(mean);
            double[] of = chances(state, asked, mean, states.size() > 1);
            double sum = 0;
            for (double chance : of) {
                sum += chance;
            }
            for (int days = 0; days < of.length; days++) {
                chances[days] += state.weight() * of[days] / sum;
            }
        }
        return HardDays.of(expected, seenByMeters.hasOneLevel() ? expected
                : ifItStays().hardDaysPerYear(policy, hardnessMilligramsPerLitre, regeneration), chances);
    }

    private List<HomeState> statesOfYears(Policy policy) {
        return policy.byClock() || policy.followsWeekdays() ? states(policy)
                : policy.startsAtOnce() ? seenByYears().ofUsualScatter() : seenByYears().all();
    }

    /** The chance of each number of hard days of a year in one state. */
    private double[] chances(HomeState state, Asked asked, double mean, boolean oneOfSeveral) {
        if (oneOfSeveral && mean < HomeState.NEGLIGIBLE_HARD_DAYS) {
            return NONE;
        }
        boolean byClock = asked.policy.byClock() || asked.policy.followsWeekdays();
        if (oneOfSeveral && byClock && (state.isOuterLevel() || !state.isUsualScatter())) {
            return HardDays.independent(mean);
        }
        if (oneOfSeveral && !byClock) {
            // A meter regenerates in proportion to use.
            return HardDays.ofCycles(mean, asked.policy.startsAtOnce() ? Days.PER_YEAR
                    : state.level() * year(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration).regenerations());
        }
        return state.days().hardDayChances(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration, yearsOfEach(), mean);
    }

    private double hardDaysPerYear(HomeState level, Asked asked) {
        DelayedMeters atLevel = DelayedMeters.in(shape, level);
        return atLevel.reads(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration)
                ? atLevel.hardDays(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration)
                : level.days().hardDaysPerYear(asked.policy, asked.hardnessMilligramsPerLitre, asked.regeneration, yearsOfEach());
    }

    /** Fewer simulated years per level where there are several levels. */
    private Drawing yearsOfEach() {
        return seenByMeters.hasOneLevel() ? Drawing.OF_ONE_LEVEL : Drawing.OF_SEVERAL_LEVELS;
    }
}
