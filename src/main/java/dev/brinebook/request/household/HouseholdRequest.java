// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.SoftenedShare;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

/** The people and their water use. An answer that holds one forecasts it: its {@link Basis} is that of a forecast. */
@SchemaDescription("The people and their water use. Give people, or a measured use as dailyUse, weeklyUse or dailySeries. You can give "
        + "people as well as a measured use. With a dailySeries they make the expected use more certain, most of all when the series is "
        + "short.")
@Alternatives({"dailyUse", "weeklyUse", "dailySeries"})
@Alternatives(value = {"people", "dailyUse", "weeklyUse", "dailySeries"}, required = true, several = true)
public record HouseholdRequest(
        @Basis
        @Property(value = "Number of residents.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Indoor use per person and day. Used when no use is measured, or when people and dailySeries are both given.",
                min = Demand.MIN_USE_PER_PERSON_LITRES, max = Demand.MAX_USE_PER_PERSON_LITRES, unit = "L",
                fallback = "the value of the country") VolumeQuantity usePerPerson,
        @Property(value = "Country of the household. Sets the default use per person and day (60 gal in the United States, 121 "
                + "L in Germany, 149 L in France, 142 L in the United Kingdom, 144 L in the European Union), the default "
                + "units, currency and prices, and the rules for drains.", defaultCode = "unitedStates", example = "\"germany\"")
        Country country,
        @Property(value = "Mean indoor use per day, measured.", min = 0, max = Demand.MAX_DAILY_USE_LITRES, unit = "L")
        VolumeQuantity dailyUse,
        @Property(value = "Mean indoor use of each weekday, measured, Monday first.", min = 0,
                max = Demand.MAX_DAILY_USE_LITRES, unit = "L", minItems = 7, maxItems = 7) List<VolumeQuantity> weeklyUse,
        @Property("Indoor use measured day by day. The expected use is estimated from it, and from people if "
                + "given. Use above four times the median day is treated as a leak or a filling.") SeriesRequest dailySeries,
        @Basis(formula = "formula.household.lnCvKLn", source = "DAIAD")
        @Property(value = "Day-to-day scatter: standard deviation of a day's use, divided by its mean. With 0 every day has the mean "
                + "use. No effect on dailySeries, whose days show their own scatter.",
                min = DayVariation.MIN_CV, max = DayVariation.MAX_CV, example = "0.42",
                fallback = DayVariation.ONE_PERSON_CV + " for one person, " + DayVariation.TWO_OR_THREE_PERSONS_CV + " for two or three, "
                        + DayVariation.FOUR_OR_MORE_PERSONS_CV + " for more, " + DayVariation.UNKNOWN_PERSONS_CV
                        + " when people are not given")
        BigDecimal dayToDayVariation,
        @Property(value = "Use on a weekend day, divided by use on a weekday. No effect on weeklyUse and dailySeries.",
                min = WeekdayMeans.MIN_WEEKEND_RATIO, max = WeekdayMeans.MAX_WEEKEND_RATIO, example = "1.09",
                fallback = WeekdayMeans.DEFAULT_WEEKEND_RATIO + ", or 1 when dayToDayVariation is 0") BigDecimal weekendRatio,
        @Property(value = "Use per day in each month, divided by that of the year, January first, scaled to a mean of 1. No "
                + "effect on dailySeries.", min = 0, max = UseModel.MAX_MONTH_FACTOR, minItems = UseModel.MONTHS,
                maxItems = UseModel.MONTHS, fallback = "the same every month",
                example = "[0.9, 0.9, 0.9, 1, 1, 1.2, 1.3, 1.2, 1, 0.9, 0.9, 0.8]") List<BigDecimal> monthFactors,
        @Basis(formula = "meter.howOftenSomeoneLeaves", source = "ANDERSON-GOODMAN")
        @Property(value = "Days on which somebody is at home. No effect on dailySeries.", defaultCode = "always")
        OccupancyRequest occupancy,
        @Property(value = "How far the level of use drifts over seasons and years, or is unknown: standard deviation of its "
                + "logarithm. The mean use does not change. For a clock, which is also affected by changes over a few weeks, "
                + "1.11 times this value is used. 0 means a constant level.", min = 0, max = UseChange.MAX_LEVEL_SPREAD, example = "0.18",
                fallback = UseChange.USUAL_LEVEL_SPREAD + " for a measured use, " + UseChange.LEVEL_SPREAD_WITH_MONTHS
                        + " with monthFactors, " + UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE + " from people alone, 0 if dayToDayVariation is "
                        + "0; estimated from the days of dailySeries")
        BigDecimal levelSpread,
        @Basis(formula = "formula.household.of02371Weight", source = "DAIAD")
        @Property(value = "Uncertainty of the day-to-day scatter: standard deviation of its logarithm. No effect if "
                + "dayToDayVariation is less than 0.25 or more than 0.9.", min = 0,
                max = UseChange.MAX_SCATTER_SPREAD, example = "0.1", fallback = UseChange.USUAL_SCATTER_SPREAD
                + ", or 0 if dayToDayVariation is given or levelSpread is 0; estimated from the days of dailySeries")
        BigDecimal scatterSpread,
        @Basis(formula = "formula.household.similarityConsecutiveDaysMeasured", source = "DAIAD")
        @Property(value = "Correlation of the use on consecutive days. It matters for a clock, which adds up several days.", min = 0,
                max = UseChange.MAX_DAY_CORRELATION, example = "0.12",
                fallback = UseChange.USUAL_DAY_CORRELATION + ", or 0 if levelSpread is 0")
        BigDecimal dayCorrelation,
        @Basis(formula = "formula.household.spreadLevelDaysSince", source = "DAIAD")
        @Property(value = "Uncertainty of the mean use, as a share of it. assess calculates both ends. 0 means exact. No "
                + "effect in other operations.", min = 0, max = Demand.MAX_USE_UNCERTAINTY_SHARE, example = "0.1",
                fallback = Demand.ASSUMED_USE_UNCERTAINTY_SHARE + "; for dailySeries, the spread of its level") BigDecimal useUncertainty,
        @Property(value = "Branches left unsoftened, besides the outdoor taps.", maxItems = 3, fallback = "none",
                example = "[\"kitchenCold\"]") List<SoftenedShare.Branch> leftHard,
        @Property(value = "Mean softened outdoor use per day.", min = 0,
                max = Demand.MAX_OUTDOOR_USE_LITRES, unit = "L", byDefault = Demand.DEFAULT_OUTDOOR_USE_LITRES,
                fallback = "outdoor taps are left unsoftened")
        VolumeQuantity outdoorUse,
        @Property(value = "Number of bathrooms, to estimate the flows.", min = 1, max = PeakFlow.MAX_BATHROOMS, example = "2",
                fallback = "one per two people, " + PeakFlow.ASSUMED_BATHROOMS + " when people are not given") Integer bathrooms,
        @Property(value = "Fixtures that the softener serves. They replace bathrooms in the estimate of the flows.",
                minItems = 1, maxItems = FixtureSchedule.MAX_KINDS, fallback = "one bathroom group per "
                + "bathroom, a kitchen sink, a clothes washer and a dishwasher") List<FixtureRequest> fixtures,
        @Property(value = "Peak flow.", min = 0, max = Demand.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                fallback = "the 99th percentile of the flow of the fixtures in bathrooms, kitchen and laundry, or the continuous flow "
                        + "if larger; with fixtures, the advice of estimatePeakFlow")
        FlowQuantity peakFlow,
        @Property(value = "Continuous flow, such as that of showers running at the same time.", min = 0,
                max = Demand.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "one shower of 2 gpm per two bathrooms; with "
                + "fixtures, the advice of estimatePeakFlow")
        FlowQuantity continuousFlow) implements Checked {

    @Override
    public void check(Violations at) {
        boolean byPeople = people != null && dailyUse == null && weeklyUse == null;
        if (usePerPerson != null && !byPeople) {
            at.add("usePerPerson", Code.INCONSISTENT, Message.of("problem.household.omitUnlessPeopleGiven"));
        }
        if (monthFactors != null && !at.at("monthFactors").here() && !monthFactors.contains(null)
                && !(relativeMonths().stream().mapToDouble(Double::doubleValue).max().orElse(0) <= UseModel.MAX_MONTH_FACTOR)) {
            at.add("monthFactors", Code.OUT_OF_RANGE, Message.of("problem.household.mustAll0Each", Text.number(UseModel.MAX_MONTH_FACTOR)));
        }
        HouseholdFlows.check(this, at);
    }

    /** Whether how much is used is only guessed from the people. */
    public boolean restsOnPeopleAlone() {
        return dailyUse == null && weeklyUse == null && dailySeries == null
                && (dayToDayVariation == null || dayToDayVariation.signum() > 0) && (levelSpread == null || levelSpread.signum() > 0);
    }

    /** The same of days that were measured: the spread of the level that they leave. */
    public static double uncertaintyShare(UseChange byDays) {
        return Math.min(Demand.MAX_USE_UNCERTAINTY_SHARE, byDays.levelSpread());
    }

    List<Double> relativeMonths() {
        double mean = monthFactors.stream().mapToDouble(BigDecimal::doubleValue).average().orElseThrow();
        return monthFactors.stream().map(factor -> factor.doubleValue() / mean).toList();
    }

    /** What is calculated with, made of this. */
    public ResolvedHousehold resolved() {
        return new ResolvedHousehold(this);
    }
}
