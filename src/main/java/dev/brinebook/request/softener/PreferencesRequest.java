package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.Duty;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.time.LocalDate;

@About("What the practitioner prefers where there is a choice.")
public record PreferencesRequest(
        @Property(value = "First day of the example of a year, where dates are given; nothing else depends on it."
                + " Never today, so that an equal request has an equal answer.",
                fallback = "2026-01-01", example = "\"2026-01-01\"") LocalDate startDate,
        @Property(value = "The capacities to count with: working for resin in use, newResin for resin as delivered.",
                fallback = "working", example = "\"working\"") CapacityTable capacityTable,
        @Property(value = "How capacity is counted: table for the ordinary water of that table, column for the water at hand.",
                fallback = "column where sodium or dissolved solids of the water are given, or a counter-current brine; else"
                + " table", example = "\"column\"") CapacityMethod capacityMethod,
        @Property(value = "What a real bed gives of the column's capacity.", min = ResinEfficiency.MIN_EFFICIENCY,
                max = ResinEfficiency.MAX_EFFICIENCY, example = "0.79", fallback = "0.79 with the working table, 0.9 with"
                + " that of new resin, which the column then gives in their water") BigDecimal resinEfficiency,
        @Property(value = "Hardness of the softened water at which the column counts a bed as exhausted.",
                min = CyclicColumn.MIN_END_POINT_MG_PER_L, max = CyclicColumn.MAX_END_POINT_MG_PER_L, unit = "mg/L",
                fallback = "1 gpg") HardnessQuantity endPoint,
        @Property(value = "Least hardness removed per salt that a recommended dose should have.", min = 0, max = 5_900,
                unit = "gr/lb", fallback = "none") SaltEfficiencyQuantity minimumSaltEfficiency,
        @Property(value = "How seldom hard water may pass because the bed is used up: settings cost as little as this allows.",
                fallback = "at most 1 day a year, and 3 with use 10 % up and capacity 5 % down")
        ServiceStandardRequest serviceStandard,
        @Property(value = "Step in which the controller takes a reserve; it is rounded up to one.",
                min = SmallestReserve.MIN_STEP_LITRES, max = SmallestReserve.MAX_STEP_LITRES, unit = "L",
                fallback = "10 gal, and in metric answers 10 L") VolumeQuantity reserveStep,
        @Property("The units and steps in which the controller takes its settings.") ControllerUnitsRequest controller,
        @Property(value = "Fewest days between regenerations that are aimed at. What costs least decides all the same; what it"
                + " would cost to keep to them is given beside.", min = 1, max = 30, unit = "days",
                fallback = "3", example = "3") BigDecimal minimumIntervalDays) {

    /** The first day of a year when the caller names none. */
    public static final LocalDate ASSUMED_START = LocalDate.of(2026, 1, 1);
    /** Source: [MMSD] at least 3 days between regenerations. */
    static final double DEFAULT_MINIMUM_INTERVAL_DAYS = 3;

    /** Largest whole number that every JSON reader keeps exactly. */
    public static final double MAX_SEED = 9_007_199_254_740_991d;

    /** Seed of the order of days, when none is given. */
    public static final long DEFAULT_SEED = 1;

    private static final PreferencesRequest NONE = new PreferencesRequest(null, null, null, null, null, null, null, null, null, null);

    /** {@code given}, or a request without preferences. */
    public static PreferencesRequest orNone(PreferencesRequest given) {
        return given == null ? NONE : given;
    }

    /** The seed asked for, or the default. */
    public static long seed(Long asked) {
        return asked == null ? DEFAULT_SEED : asked;
    }

    public LocalDate start(Explanation explanation) {
        LocalDate start = startDate == null ? ASSUMED_START : startDate;
        explanation.assume("preferences.startDate", Message.verbatim(start.toString()), startDate == null
                ? Origin.DEFAULT : Origin.CALLER);
        return start;
    }

    public CapacityTable table(Explanation explanation) {
        return explanation.orDefault("preferences.capacityTable", capacityTable, CapacityTable.WORKING);
    }

    /**
     * The table, for a calculation that knows no water.
     *
     * @throws InvalidRequest when the column is asked for
     */
    public CapacityTable tableOnly(Explanation explanation) {
        if (capacityMethod == CapacityMethod.COLUMN) {
            throw InvalidRequest.impossible("/preferences/capacityMethod", Message.of("must be table here: the column needs"
                    + " a water test, which this request does not hold"));
        }
        explanation.assume("preferences.capacityMethod", Message.of("{0}, since no water test is told here",
                WireNames.of(CapacityMethod.TABLE)), capacityMethod == null ? Origin.DEFAULT : Origin.CALLER);
        return table(explanation);
    }

    /**
     * What resin takes up from a water, by the table or by the column.
     *
     * @throws InvalidRequest when the column is asked for and the water is too soft for its end point
     */
    public CapacityModel capacity(WaterRequest water, WaterAnalysis analysis, ResinState state, Explanation explanation) {
        CapacityTable table = table(explanation);
        CapacityMethod method = method(analysis, feed(water, analysis), endPointMgPerL(), state.direction(), explanation);
        return method == CapacityMethod.TABLE ? table.withSitesLeft(state.sitesLeft()) : column(water, analysis, state, explanation);
    }

    /** What the column of a resin gives in a water that is hard enough for its end point. */
    public ColumnCapacity column(WaterRequest water, WaterAnalysis analysis, ResinState state, Explanation explanation) {
        CapacityTable table = table(explanation);
        FeedWater feed = feed(water, analysis);
        double end = endPointMgPerL(explanation);
        ColumnAssumptions.tell(water, analysis, feed, state.resin(), explanation);
        double efficiency = explanation.orDefault("preferences.resinEfficiency", resinEfficiency,
                table == CapacityTable.NEW_RESIN ? ResinEfficiency.NEW_RESIN : ResinEfficiency.WORKING,
                number -> Message.of("{0}", number));
        return new ColumnCapacity(state.resin(), feed, state.direction(), efficiency, end, RememberedColumns.COLUMNS);
    }

    /** Hardness at which the column counts a bed as exhausted, with its default told to {@code explanation}. */
    public double endPointMgPerL(Explanation explanation) {
        return explanation.orDefault("preferences.endPoint", endPoint, endPointMgPerL(), explanation.inBothUnits(
                AnswerUnits.US.hardness(CyclicColumn.DEFAULT_END_POINT_MG_PER_L),
                AnswerUnits.METRIC.hardness(CyclicColumn.DEFAULT_END_POINT_MG_PER_L)));
    }

    private double endPointMgPerL() {
        return endPoint == null ? CyclicColumn.DEFAULT_END_POINT_MG_PER_L : endPoint.inBase();
    }

    /** The cations of a water, as the column needs to know them. */
    public static FeedWater feed(WaterRequest water, WaterAnalysis analysis) {
        return FeedWater.of(analysis, water.calciumShare().orElse(FeedWater.ASSUMED_CALCIUM_SHARE),
                water.potassium() == null ? 0 : water.potassium().inBase());
    }

    /** The method asked for; else the column where the water is known well enough for it, and hard enough. */
    private CapacityMethod method(WaterAnalysis water, FeedWater feed, double endMgPerL, Brining.Direction direction,
            Explanation explanation) {
        boolean hardEnough = ColumnCapacity.isFor(feed, endMgPerL);
        if (capacityMethod == CapacityMethod.COLUMN && !hardEnough) {
            throw InvalidRequest.impossible(endPoint == null ? "/preferences/capacityMethod" : "/preferences/endPoint",
                    Message.of("the column needs water at least twice as hard as the end point of {0} mg/L, and this has {1}"
                            + " mg/L of calcium and magnesium hardness", Text.number(endMgPerL),
                            Text.number(feed.hardnessMgPerL())));
        }
        if (capacityMethod != null) {
            return explanation.orDefault("preferences.capacityMethod", capacityMethod, capacityMethod);
        }
        boolean known = water.sodiumMgPerL().isPresent() || water.dissolvedSolidsMgPerL().isPresent()
                || direction == Brining.Direction.COUNTER_CURRENT;
        CapacityMethod method = known && hardEnough ? CapacityMethod.COLUMN : CapacityMethod.TABLE;
        String name = WireNames.of(method);
        explanation.assume("preferences.capacityMethod", method == CapacityMethod.COLUMN
                ? Message.of("{0}, because sodium, dissolved solids or a counter-current brine are told", name)
                : known ? Message.of("{0}, because the water is less than twice as hard as the end point", name)
                        : Message.of("{0}, because neither sodium nor dissolved solids of the water are told", name),
                method == CapacityMethod.COLUMN ? Origin.DERIVED : Origin.DEFAULT);
        return method;
    }

    /** The service standard asked for, or the usual one. */
    public ServiceStandard standard(Explanation explanation) {
        return (serviceStandard == null ? ServiceStandardRequest.NONE : serviceStandard).toDomain(explanation);
    }

    /** The units and steps of the controller; {@code control} and {@code country} may be null. */
    public ControllerTerms controllerTerms(ControlRequest control, Country country, AnswerUnits units, Explanation explanation) {
        return (controller == null ? ControllerUnitsRequest.NONE : controller).toDomain(control, country, reserveStep, units,
                explanation);
    }

    public double minimumIntervalDays(Explanation explanation) {
        return explanation.orDefault("preferences.minimumIntervalDays", minimumIntervalDays,
                DEFAULT_MINIMUM_INTERVAL_DAYS, days -> Message.counted("{0} day", "{0} days", days));
    }

    /**
     * What a softener is there to do, on {@code days} days from the start on, or on the days that were measured.
     *
     * @param seed sets the example of a year, where dates are asked for; null for the default
     * @param terms the units and steps of the controller
     */
    public Duty duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, int days, Long seed,
            ControllerTerms terms, Explanation explanation) {
        explanation.assume("seed", Message.of("{0}", seed(seed)), seed == null ? Origin.DEFAULT : Origin.CALLER);
        return new Duty(water, hardness, demand, demand.days(start(explanation), days, seed(seed)), LongRun.of(demand.model()),
                standard(explanation), terms, minimumIntervalDays(explanation),
                explanation.orDefault("preferences.minimumSaltEfficiency", minimumSaltEfficiency, 0,
                        Message.of("none")));
    }
}
