// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.regeneration.LongRun;
import dev.brinebook.regeneration.Policy;
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
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Practice;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.time.LocalDate;

@SchemaDescription("Preferences of the practitioner.")
public record PreferencesRequest(
        @Property(value = "First day of the example year, where the answer has dates. Nothing else depends on it. The default is never "
                + "today, so that equal requests get equal answers.",
                defaultCode = PreferencesRequest.ASSUMED_START_DATE, example = "\"2026-01-01\"") LocalDate startDate,
        @Property(value = "Capacity table to use: working for resin in use, newResin for resin as delivered.",
                defaultCode = "working", example = "\"working\"") CapacityTable capacityTable,
        @Property(value = "Capacity method: table assumes the ordinary water of the capacity table, column uses the water given.",
                fallback = "column if sodium or dissolved solids of the water are given, or the brine is counter-current; else "
                + "table", example = "\"column\"") CapacityMethod capacityMethod,
        @Property(value = "Efficiency of a real bed, as a share of the column's capacity.", min = ResinEfficiency.MIN_EFFICIENCY,
                max = ResinEfficiency.MAX_EFFICIENCY, example = "0.79", fallback = ResinEfficiency.WORKING + " with the working "
                + "table, " + ResinEfficiency.NEW_RESIN + " with the table of new resin. With these the column reproduces the table in "
                + "the water of the table") BigDecimal resinEfficiency,
        @Property(value = "Hardness of the softened water at which the column treats the bed as exhausted.",
                min = CyclicColumn.MIN_END_POINT_MG_PER_L, max = CyclicColumn.MAX_END_POINT_MG_PER_L, unit = "mg/L",
                byDefault = CyclicColumn.DEFAULT_END_POINT_GPG, defaultUnit = "gpg") HardnessQuantity endPoint,
        @Property(value = "Minimum salt efficiency of a recommended dose.", min = 0, max = 5_900,
                unit = "gr/lb", byDefault = PreferencesRequest.NO_MINIMUM_EFFICIENCY) SaltEfficiencyQuantity minimumSaltEfficiency,
        @Property(value = "How rarely hard water may pass because the bed is exhausted. Settings are the cheapest that meet it.",
                fallback = "at most " + (int) ServiceStandard.ASSUMED_HARD_DAYS + " day a year, and "
                + (int) ServiceStandard.ASSUMED_STRESSED_HARD_DAYS + " with " + ServiceStandard.ASSUMED_STRESSED_USE
                + " times the use and " + ServiceStandard.ASSUMED_STRESSED_CAPACITY + " times the capacity")
        ServiceStandardRequest serviceStandard,
        @Property(value = "Step of the reserve setting. The reserve is rounded up to it.",
                min = SmallestReserve.MIN_STEP_LITRES, max = SmallestReserve.MAX_STEP_LITRES, unit = "L",
                fallback = ControllerTerms.ASSUMED_VOLUME_STEP + " gal, and in metric answers "
                + ControllerTerms.ASSUMED_VOLUME_STEP + " L") VolumeQuantity reserveStep,
        @Property("Units and steps of the controller's settings.") ControllerUnitsRequest controller,
        @Property(value = "Target for the fewest days between regenerations. The lowest cost still "
                + "decides. The answer also gives the extra cost of meeting this target.", min = 1, max = 30, unit = "days",
                byDefault = PreferencesRequest.DEFAULT_MINIMUM_INTERVAL_DAYS, example = "3") BigDecimal minimumIntervalDays) {

    /** The first day of a year when the caller names none. */
    static final String ASSUMED_START_DATE = "2026-01-01";
    public static final LocalDate ASSUMED_START = LocalDate.parse(ASSUMED_START_DATE);
    /** Every salt efficiency reaches it. */
    static final double NO_MINIMUM_EFFICIENCY = 0;
    /** Source: [MMSD] at least 3 days between regenerations. */
    static final double DEFAULT_MINIMUM_INTERVAL_DAYS = 3;

    /** Largest whole number that every JSON reader keeps exactly. */
    public static final double MAX_SEED = 9_007_199_254_740_991d;

    /** Seed of the order of days, when none is given. */
    public static final long DEFAULT_SEED = 1;

    private static final String CAPACITY_METHOD = "/preferences/capacityMethod";
    private static final PreferencesRequest NONE = new PreferencesRequest(null, null, null, null, null, null, null, null, null, null);

    /** {@code given}, or a request without preferences. */
    public static PreferencesRequest orNone(PreferencesRequest given) {
        return given == null ? NONE : given;
    }

    /** The seed requested, or the default. */
    public static long seed(Long asked) {
        return asked == null ? DEFAULT_SEED : asked;
    }

    public LocalDate start(Explanation explanation) {
        explanation.assume(startDate == null
                ? Resolved.ofCode("/preferences/startDate", ASSUMED_START_DATE).byDefault("OWN-ASSUMPTION")
                : Resolved.ofCode("/preferences/startDate", startDate.toString()));
        return startDate == null ? ASSUMED_START : startDate;
    }

    public CapacityTable table(Explanation explanation) {
        return explanation.resolve("/preferences/capacityTable", capacityTable, CapacityTable.WORKING, "CP-WORKING-TABLE");
    }

    /**
     * The table, for a calculation that knows no water.
     *
     * @throws InvalidRequest when the column is asked for
     */
    public CapacityTable tableOnly(Explanation explanation) {
        if (capacityMethod == CapacityMethod.COLUMN) {
            throw InvalidRequest.impossible(CAPACITY_METHOD, Message.of("problem.softener.mustTableColumnNeeds"));
        }
        Resolved method = Resolved.of(CAPACITY_METHOD, CapacityMethod.TABLE);
        explanation.assume(capacityMethod != null ? method
                : method.byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.softener.capacityTableBecauseNo")));
        return table(explanation);
    }

    /**
     * Capacity of the resin in a water, by the table or by the column.
     *
     * @throws InvalidRequest when the column is asked for and the water is too soft for its end point
     */
    public CapacityModel capacity(WaterRequest water, WaterAnalysis analysis, ResinState state, Explanation explanation) {
        CapacityTable table = table(explanation);
        CapacityMethod method = method(analysis, feed(water, analysis), endPointMgPerL(), state.direction(), explanation);
        if (method == CapacityMethod.TABLE) {
            return table.withSitesLeft(state.sitesLeft());
        }
        explanation.assume(Resolved.of("columnStages", state.resin().stages(), null).byDefault("OWN-ASSUMPTION"));
        return column(water, analysis, state, explanation);
    }

    /** Capacity by the column of a resin with known stages, in a water that is hard enough for its end point. */
    public ColumnCapacity column(WaterRequest water, WaterAnalysis analysis, ResinState state, Explanation explanation) {
        CapacityTable table = table(explanation);
        FeedWater feed = feed(water, analysis);
        double end = endPointMgPerL(explanation);
        ColumnAssumptions.assume(water, analysis, feed, explanation);
        boolean asNew = table == CapacityTable.NEW_RESIN;
        double efficiency = explanation.resolve(resinEfficiency, Resolved.of("/preferences/resinEfficiency",
                asNew ? ResinEfficiency.NEW_RESIN : ResinEfficiency.WORKING, null)
                .byDefault(asNew ? "RESIN-DATA-SHEET" : "CP-WORKING-TABLE"));
        return new ColumnCapacity(state.resin(), feed, state.direction(), efficiency, end, BedCapacityCache.COLUMNS);
    }

    /** Hardness at which the column counts a bed as exhausted, with its default recorded in {@code explanation}. */
    public double endPointMgPerL(Explanation explanation) {
        return explanation.resolve(endPoint, CyclicColumn.DEFAULT_END_POINT_MG_PER_L, Resolved.of("/preferences/endPoint",
                AnswerUnits.of(explanation).hardness(CyclicColumn.DEFAULT_END_POINT_MG_PER_L)).byDefault("NSF-ANSI-44"));
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
            throw InvalidRequest.impossible(endPoint == null ? CAPACITY_METHOD : "/preferences/endPoint",
                    Message.of("problem.softener.columnNeedsWaterLeast", Text.rounded(HardnessQuantity.forReader(endMgPerL, explanation)),
                            Text.rounded(HardnessQuantity.forReader(feed.hardnessMgPerL(), explanation))));
        }
        if (capacityMethod != null) {
            explanation.assume(Resolved.of(CAPACITY_METHOD, capacityMethod));
            return capacityMethod;
        }
        boolean known = water.sodiumMgPerL().isPresent() || water.dissolvedSolidsMgPerL().isPresent()
                || direction == Brining.Direction.COUNTER_CURRENT;
        CapacityMethod method = known && hardEnough ? CapacityMethod.COLUMN : CapacityMethod.TABLE;
        Resolved chosen = Resolved.of(CAPACITY_METHOD, method);
        explanation.assume(method == CapacityMethod.COLUMN
                ? chosen.estimated("OWN-ASSUMPTION").noting(Message.of("assumed.softener.equilibriumColumnBecauseSodium"))
                : chosen.byDefault("OWN-ASSUMPTION").noting(known ? Message.of("assumed.softener.capacityTableBecauseWater")
                        : Message.of("assumed.softener.capacityTableBecauseNeither")));
        return method;
    }

    /** The service standard asked for, or the usual one. */
    public ServiceStandard standard(Explanation explanation) {
        return (serviceStandard == null ? ServiceStandardRequest.NONE : serviceStandard).toDomain(explanation);
    }

    /** The units and steps of the controller; {@code control} and {@code country} may be null. */
    public ControllerTerms controllerTerms(ControlRequest control, Country country, AnswerUnits units, Model model,
            Explanation explanation) {
        return (controller == null ? ControllerUnitsRequest.NONE : controller).toDomain(control, country, reserveStep, units,
                model, explanation);
    }

    public double minimumIntervalDays(Explanation explanation) {
        return explanation.resolve(minimumIntervalDays,
                Resolved.of("/preferences/minimumIntervalDays", DEFAULT_MINIMUM_INTERVAL_DAYS, "days").byDefault("MMSD"));
    }

    /**
     * The demand on a softener, on {@code days} days from the start, or on the measured days.
     *
     * @param seed sets the example of a year, where dates are asked for; null for the default
     * @param terms the units and steps of the controller
     * @param practice how a softener is judged
     */
    public DesignConditions duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, int days, Long seed,
            ControllerTerms terms, Practice practice, Explanation explanation) {
        explanation.resolve(seed, Resolved.of("/seed", DEFAULT_SEED, null).byDefault("OWN-ASSUMPTION"));
        return new DesignConditions(water, hardness, demand, demand.days(start(explanation), days, seed(seed)), LongRun.of(demand.model()),
                standard(explanation), terms, minimumIntervalDays(explanation),
                explanation.resolve(minimumSaltEfficiency, NO_MINIMUM_EFFICIENCY, Resolved.of("/preferences/minimumSaltEfficiency",
                        AnswerUnits.of(explanation).saltEfficiency(NO_MINIMUM_EFFICIENCY)).byDefault("OWN-ASSUMPTION")), practice);
    }

    /** How a softener is judged by a version of the model in a country. */
    public static Practice practice(Model model, Country country) {
        return new Practice(model.has(ModelChange.IRON_ON_DAYS_OF_USE), model.has(ModelChange.TOO_SMALL_SOFTENERS),
                model.has(ModelChange.CLOSE_SETTINGS_STAY), model.has(ModelChange.IDLE_DAYS_BY_COUNTRY)
                        ? Country.orAssumed(country).mostIdleDays() : Policy.DEFAULT_OVERRIDE_DAYS);
    }
}
