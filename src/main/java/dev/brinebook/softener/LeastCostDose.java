package dev.brinebook.softener;

import dev.brinebook.guard.Figure;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.ExpectedInterval;
import dev.brinebook.regeneration.Reserve;
import dev.brinebook.wording.Worded;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

/**
 * The salt dose that costs least a year on the mean of many years, with the reserve that covers the next day as often as
 * the duty asks for, among all doses that keep to the limits.
 *
 * <p>Where {@link DoseChoice} tries settable doses on the days of one year, this looks at the smooth mean of endless years,
 * and so tells how far the dose that is set lies from the best, and what keeps it from costing less.
 *
 * @param saltDoseGramsPerLitre the dose
 * @param costPerYear salt and regeneration water of a mean year
 * @param intervalDays mean days between two regenerations
 * @param boundBy what keeps a cheaper dose out, or that none is cheaper
 */
public record LeastCostDose(double saltDoseGramsPerLitre, double costPerYear, double intervalDays, Bound boundBy) {

    /** What decides the dose, said as a sentence without capital and full stop. */
    public enum Bound implements Worded {
        /** Less salt would regenerate too often and more would remove too little: the cost itself has its least here. */
        COST("a lower dose regenerates so often that it costs more, a higher one removes less hardness for its salt"),
        /** A lower dose would leak more than the end point. */
        LEAKAGE("a lower dose would cost less, but leaks more hardness than the end point allows"),
        /** A lower dose would not last the fewest days. */
        INTERVAL("a lower dose would cost less, but does not last the fewest days between regenerations"),
        /** A higher dose would be less efficient than asked for. */
        EFFICIENCY("a higher dose would cost less, but removes less hardness for its salt than is asked for"),
        LOWEST_RECOMMENDED("a lower dose would cost less, but is lower than is recommended for this water"),
        HIGHEST_RECOMMENDED("a higher dose would cost less, but is higher than is recommended");

        private final String words;

        Bound(String words) {
            this.words = words;
        }

        @Override
        public String words() {
            return words;
        }
    }

    private static final double RELATIVE_ACCURACY = 1e-5;
    private static final double DOSE_ACCURACY_GRAMS_PER_LITRE = 1e-3;
    private static final int MAX_EVALUATIONS = 200;

    /** The least costly dose within the limits of {@code duty}; none when the limits leave no dose. */
    public static Optional<LeastCostDose> of(Softener softener, Duty duty, RunningCost cost) {
        return new Search(softener, duty, cost).least();
    }

    /** What is looked at, by dose. */
    private static final class Search {

        private final Softener softener;
        private final Duty duty;
        private final RunningCost cost;
        private final double meanLitres;
        private final double cv;
        private final double reserveLitres;
        private final int overrideDays;

        Search(Softener softener, Duty duty, RunningCost cost) {
            this.softener = softener;
            this.duty = duty;
            this.cost = cost;
            meanLitres = duty.days().meanLitres();
            cv = Demand.coefficientOfVariation(duty.days());
            reserveLitres = new Reserve.PercentileDay(duty.reserveProbability())
                    .litres(0, duty.demand().model().busiestMonthMeans(),
                    duty.demand().variation().cv());
            overrideDays = MeterSettings.overrideDays(duty);
        }

        Optional<LeastCostDose> least() {
            double low = grams(DoseChoice.lowestPoundsPerCubicFoot(duty.water()));
            double high = grams(DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT);
            Bound lowBound = Bound.LOWEST_RECOMMENDED;
            Bound highBound = Bound.HIGHEST_RECOMMENDED;
            Figure held = softener.capacity().leastSaltDoseGramsPerLitre(softener.salt());
            if (!held.exists() || held.value() > high) {
                return Optional.empty();
            }
            if (held.value() > low) {
                low = held.value();
                lowBound = Bound.LEAKAGE;
            }
            if (intervalDays(low) < duty.minimumIntervalDays()) {
                if (intervalDays(high) < duty.minimumIntervalDays()) {
                    return Optional.empty();
                }
                low = root(dose -> intervalDays(dose) - duty.minimumIntervalDays(), low, high);
                lowBound = Bound.INTERVAL;
            }
            double efficiency = duty.minimumSaltEfficiencyGramsPerGram();
            if (efficiencyGramsPerGram(high) < efficiency) {
                if (efficiencyGramsPerGram(low) < efficiency) {
                    return Optional.empty();
                }
                high = root(dose -> efficiencyGramsPerGram(dose) - efficiency, low, high);
                highBound = Bound.EFFICIENCY;
            }
            return Optional.of(leastBetween(low, lowBound, high, highBound))
                    .filter(found -> softener.capacity().isKnownAt(softener.salt(), found.saltDoseGramsPerLitre()));
        }

        private LeastCostDose leastBetween(double low, Bound lowBound, double high, Bound highBound) {
            if (high - low > DOSE_ACCURACY_GRAMS_PER_LITRE) {
                UnivariatePointValuePair inside = new BrentOptimizer(RELATIVE_ACCURACY, DOSE_ACCURACY_GRAMS_PER_LITRE)
                        .optimize(new MaxEval(MAX_EVALUATIONS), GoalType.MINIMIZE, new SearchInterval(low, high),
                                new UnivariateObjectiveFunction(this::costPerYear));
                if (inside.getValue() < Math.min(costPerYear(low), costPerYear(high))) {
                    return at(inside.getPoint(), Bound.COST);
                }
            }
            return costPerYear(low) <= costPerYear(high) ? at(low, lowBound) : at(high, highBound);
        }

        private LeastCostDose at(double dose, Bound bound) {
            return new LeastCostDose(dose, costPerYear(dose), intervalDays(dose), bound);
        }

        private double costPerYear(double dose) {
            DosedSoftener dosed = DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius());
            return cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres())
                    * Days.PER_YEAR / intervalDays(dose);
        }

        private double intervalDays(double dose) {
            double meterLitres = 1000 * capacityGrams(dose) / duty.settingMgPerL();
            return ExpectedInterval.days(Math.max(0, meterLitres - reserveLitres), meanLitres, cv, overrideDays);
        }

        private double efficiencyGramsPerGram(double dose) {
            return softener.capacity().capacityOrNoneGramsPerLitre(softener.salt(), dose) / dose;
        }

        /** A dose without a capacity counts as one that restores nothing, and so is passed over. */
        private double capacityGrams(double dose) {
            return softener.bed().resinLitres() * softener.capacity().capacityOrNoneGramsPerLitre(softener.salt(), dose);
        }

        private double grams(double poundsPerCubicFoot) {
            return softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot));
        }

        private static double root(DoubleUnaryOperator difference, double low, double high) {
            return new BrentSolver(DOSE_ACCURACY_GRAMS_PER_LITRE).solve(MAX_EVALUATIONS, difference::applyAsDouble, low,
                    high);
        }
    }
}
