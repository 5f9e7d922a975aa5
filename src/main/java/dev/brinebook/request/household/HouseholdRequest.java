// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.SoftenedShare;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

@SchemaDescription("The people and their water use. Give people, or a measured use as dailyUse, weeklyUse or dailySeries. You can give "
        + "people as well as a measured use. With a dailySeries they make the expected use more certain, most of all when the series is "
        + "short.")
public record HouseholdRequest(
        @Property(value = "Number of residents.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Indoor use per person and day. Used when no use is measured, or when people and dailySeries are both given.",
                min = Demand.MIN_USE_PER_PERSON_LITRES, max = Demand.MAX_USE_PER_PERSON_LITRES, unit = "L",
                fallback = "the value of the country") VolumeQuantity usePerPerson,
        @Property(value = "Country of the household. Sets the default use per person and day (60 gal in the United States, 121 "
                + "L in Germany, 149 L in France, 142 L in the United Kingdom, 144 L in the European Union), the default "
                + "units, currency and prices, and the rules for drains.", fallback = "unitedStates", example = "\"germany\"")
        Country country,
        @Property(value = "Mean indoor use per day, measured.", min = 0, max = Demand.MAX_DAILY_USE_LITRES, unit = "L")
        VolumeQuantity dailyUse,
        @Property(value = "Mean indoor use of each weekday, measured, Monday first.", min = 0,
                max = Demand.MAX_DAILY_USE_LITRES, unit = "L", minItems = 7, maxItems = 7) List<VolumeQuantity> weeklyUse,
        @Property("Indoor use measured day by day. The expected use is estimated from it, and from people if "
                + "given. Use above four times the median day is treated as a leak or a filling.") SeriesRequest dailySeries,
        @Property(value = "Day-to-day scatter: standard deviation of a day's use, divided by its mean. With 0 every day has the mean "
                + "use. No effect on dailySeries, whose days show their own scatter.",
                min = DayVariation.MIN_CV, max = DayVariation.MAX_CV, example = "0.42",
                fallback = "0.60 for one person, 0.42 for two or three, 0.38 for more, 0.45 when people are not given")
        BigDecimal dayToDayVariation,
        @Property(value = "Use on a weekend day, divided by use on a weekday. No effect on weeklyUse and dailySeries.",
                min = WeekdayMeans.MIN_WEEKEND_RATIO, max = WeekdayMeans.MAX_WEEKEND_RATIO, example = "1.09",
                fallback = "1.09, or 1 when dayToDayVariation is 0") BigDecimal weekendRatio,
        @Property(value = "Use per day in each month, divided by that of the year, January first, scaled to a mean of 1. No "
                + "effect on dailySeries.", min = 0, max = UseModel.MAX_MONTH_FACTOR, minItems = UseModel.MONTHS,
                maxItems = UseModel.MONTHS, fallback = "the same every month",
                example = "[0.9, 0.9, 0.9, 1, 1, 1.2, 1.3, 1.2, 1, 0.9, 0.9, 0.8]") List<BigDecimal> monthFactors,
        @Property(value = "Days on which somebody is at home. No effect on dailySeries.", fallback = "always")
        OccupancyRequest occupancy,
        @Property(value = "How far the level of use drifts over seasons and years, or is unknown: standard deviation of its "
                + "logarithm. The mean use does not change. For a clock, which is also affected by changes over a few weeks, "
                + "1.11 times this value is used. 0 means a constant level.", min = 0, max = UseChange.MAX_LEVEL_SPREAD, example = "0.18",
                fallback = "0.18 for a measured use, 0.16 with monthFactors, 0.377 from people alone, 0 if dayToDayVariation is 0; "
                + "estimated from the days of dailySeries")
        BigDecimal levelSpread,
        @Property(value = "Uncertainty of the day-to-day scatter: standard deviation of its logarithm. No effect if "
                + "dayToDayVariation is less than 0.25 or more than 0.9.", min = 0,
                max = UseChange.MAX_SCATTER_SPREAD, example = "0.1", fallback = "0.237, or 0 if "
                + "dayToDayVariation is given or levelSpread is 0; estimated from the days of dailySeries") BigDecimal scatterSpread,
        @Property(value = "Correlation of the use on consecutive days. It matters for a clock, which adds up several days.", min = 0,
                max = UseChange.MAX_DAY_CORRELATION, example = "0.12", fallback = "0.12, or 0 if levelSpread is 0")
        BigDecimal dayCorrelation,
        @Property(value = "Uncertainty of the mean use, as a share of it. assess calculates both ends. 0 means exact. No "
                + "effect in other operations.", min = 0, max = Demand.MAX_USE_UNCERTAINTY_SHARE, example = "0.1",
                fallback = "0.2; for dailySeries, the spread of its level") BigDecimal useUncertainty,
        @Property(value = "Branches left unsoftened, besides the outdoor taps.", maxItems = 3, fallback = "none",
                example = "[\"kitchenCold\"]") List<SoftenedShare.Branch> leftHard,
        @Property(value = "Mean softened outdoor use per day.", min = 0,
                max = Demand.MAX_OUTDOOR_USE_LITRES, unit = "L", fallback = "0 L: outdoor taps are left unsoftened")
        VolumeQuantity outdoorUse,
        @Property(value = "Number of bathrooms, to estimate the flows.", min = 1, max = PeakFlow.MAX_BATHROOMS, example = "2",
                fallback = "one per two people") Integer bathrooms,
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
        long measured = Stream.of(dailyUse, weeklyUse, dailySeries).filter(Objects::nonNull).count();
        if (measured > 1) {
            at.add("dailyUse", Code.INCONSISTENT, Message.of("household.giveOnlyOneDailyuse"));
        } else if (measured == 0 && people == null && !at.here()) {
            at.add("people", Code.MISSING, Message.of("household.missingPeopleGiveOr"));
        }
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

    /** The softened demand in SI, with every default recorded in {@code explanation}. */
    public Demand toDomain(Explanation explanation) {
        Demand demand = demand(explanation);
        if (demand.meanLitres() > Demand.MOST_OF_A_HOUSEHOLD_LITRES && fixtures == null && peakFlow == null) {
            explanation.caution(Caution.COMMERCIAL_USE);
        }
        return demand;
    }

    private Demand demand(Explanation explanation) {
        explanation.orDefault("household.country", country, Country.UNITED_STATES);
        double share = softenedShare(explanation);
        double outdoorLitres = explanation.orDefault("household.outdoorUse", outdoorUse, 0, Text.measure(BigDecimal.valueOf(0), "L"));
        HouseholdFlows flows = HouseholdFlows.of(this, explanation);
        if (dailySeries != null) {
            MeteredDays indoor = dailySeries.toDays(explanation);
            UseModel fitted = fitted(indoor, explanation);
            questionUse(fitted.means().meanLitres(), explanation);
            return new Demand(fitted.withMeans(fitted.means().times(share).plus(outdoorLitres)),
                    Optional.of(indoor.times(share).plus(outdoorLitres).filled()), flows.peakLitresPerMinute(),
                    flows.continuousLitresPerMinute());
        }
        DayVariation variation = variation(explanation);
        WeekdayMeans means = means(share, outdoorLitres, variation, explanation);
        return new Demand(new UseModel(means, variation, months(explanation), occupancy(explanation),
                change(usualLevelSpread(), usualScatterSpread(), explanation)), Optional.empty(),
                flows.peakLitresPerMinute(), flows.continuousLitresPerMinute());
    }

    /** Whether how much is used is only guessed from the people. */
    public boolean restsOnPeopleAlone() {
        return dailyUse == null && weeklyUse == null && dailySeries == null
                && (dayToDayVariation == null || dayToDayVariation.signum() > 0) && (levelSpread == null || levelSpread.signum() > 0);
    }

    private double usualLevelSpread() {
        if (dayToDayVariation != null && dayToDayVariation.signum() == 0) {
            return 0;
        }
        return dailyUse == null && weeklyUse == null ? UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE
                : monthFactors == null ? UseChange.USUAL_LEVEL_SPREAD : UseChange.LEVEL_SPREAD_WITH_MONTHS;
    }

    private double usualScatterSpread() {
        return dayToDayVariation == null ? UseChange.USUAL_SCATTER_SPREAD : 0;
    }

    /** How far the home may differ from its data: usual values unless the request gives others. */
    private UseChange change(double usualLevel, double usualScatter, Explanation explanation) {
        double level = explanation.orDefault("household.levelSpread", levelSpread, usualLevel, spread -> Message.of("pattern.value",
                spread));
        double scatter = explanation.orDefault("household.scatterSpread", scatterSpread, level == 0 ? 0 : usualScatter,
                spread -> Message.of("pattern.value", spread));
        double correlation = explanation.orDefault("household.dayCorrelation", dayCorrelation,
                level == 0 ? 0 : UseChange.USUAL_DAY_CORRELATION, number -> Message.of("pattern.value", number));
        return new UseChange(level, scatter, correlation);
    }

    /** By how much the mean use may be wrong, as a share of it. */
    public double useUncertaintyShare(Demand demand, Explanation explanation) {
        if (useUncertainty == null && demand.measured().isPresent()) {
            double share = uncertaintyShare(demand.model().change());
            explanation.assume("household.useUncertainty", Message.of("assumed.household.spreadLevelUse", Text.number(share)),
                    Origin.DERIVED);
            return share;
        }
        return explanation.orDefault("household.useUncertainty", useUncertainty, Demand.ASSUMED_USE_UNCERTAINTY_SHARE,
                share -> Message.of("assumed.household.meanUse", share));
    }

    /** The same of days that were measured: the spread of the level that they leave. */
    public static double uncertaintyShare(UseChange byDays) {
        return Math.min(Demand.MAX_USE_UNCERTAINTY_SHARE, byDays.levelSpread());
    }

    /** What to expect of the household that the days were measured in. */
    private UseModel fitted(MeteredDays indoor, Explanation explanation) {
        OptionalDouble byPeople = people == null ? OptionalDouble.empty()
                : OptionalDouble.of(people * usePerPersonLitres(explanation));
        MeteredDays latest = UseEstimate.of(indoor).latest(indoor);
        HouseholdFit fit = HouseholdFit.of(latest, byPeople);
        FittedSeries.explain(fit, latest, byPeople, dailySeries.unit(), explanation);
        UseChange byDays = fit.model().change();
        if (levelSpread == null) {
            FittedSeries.explainSpread("household.levelSpread", byDays.levelSpread(), fit, explanation);
        }
        if (scatterSpread == null && (levelSpread == null || levelSpread.signum() > 0)) {
            FittedSeries.explainSpread("household.scatterSpread", byDays.scatterSpread(), fit, explanation);
        }
        return fit.model().with(change(byDays.levelSpread(), byDays.scatterSpread(), explanation));
    }

    private List<Double> months(Explanation explanation) {
        explanation.assume("household.monthFactors", monthFactors == null ? Message.of("assumed.household.sameUseEveryMonth")
                : Message.of("assumed.household.givenDividedTheirMean"), monthFactors == null ? Origin.DEFAULT : Origin.CALLER);
        return monthFactors == null ? UseModel.EVEN_MONTHS : relativeMonths();
    }

    private List<Double> relativeMonths() {
        double mean = monthFactors.stream().mapToDouble(BigDecimal::doubleValue).average().orElseThrow();
        return monthFactors.stream().map(factor -> factor.doubleValue() / mean).toList();
    }

    private Occupancy occupancy(Explanation explanation) {
        explanation.assume("household.occupancy", occupancy == null ? Message.of("assumed.household.alwaysHome")
                : Message.verbatim(WireNames.of(occupancy.pattern())), occupancy == null ? Origin.DEFAULT : Origin.CALLER);
        return occupancy == null ? Occupancy.ALWAYS : occupancy.toDomain();
    }

    private double softenedShare(Explanation explanation) {
        var branches = leftHard == null ? Set.<SoftenedShare.Branch>of() : Set.copyOf(leftHard);
        double share = SoftenedShare.of(branches);
        explanation.assume("household.leftHard", branches.isEmpty() ? Message.of("assumed.household.outdoorTapsOnly")
                : Message.of("assumed.household.indoorUseSoftened",
                        String.join(", ", leftHard.stream().map(WireNames::of).sorted().toList()), Text.number(100 * share)),
                leftHard == null ? Origin.DEFAULT : Origin.CALLER);
        return share;
    }

    private DayVariation variation(Explanation explanation) {
        DayVariation usual = people == null ? DayVariation.UNKNOWN_PERSONS : DayVariation.forPersons(people);
        double cv = explanation.orDefault("household.dayToDayVariation", dayToDayVariation, usual.cv(),
                number -> Message.of("pattern.value", number));
        return cv == usual.cv() ? usual : DayVariation.ofCv(cv);
    }

    private double usePerPersonLitres(Explanation explanation) {
        if (usePerPerson != null) {
            return explanation.orDefault("household.usePerPerson", usePerPerson, 0, Message.verbatim(""));
        }
        Country home = Country.orAssumed(country);
        explanation.assume("household.usePerPerson", home == Country.UNITED_STATES
                ? explanation.inUnits(Message.of("household.of60GalPerPerson"), perPerson(home)) : perPerson(home),
                country == null ? Origin.DEFAULT : Origin.DERIVED);
        return home.usePerPersonLitres();
    }

    /** Asks for people, unit or a leak where a person uses what hardly anybody does. */
    private void questionUse(double indoorLitres, Explanation explanation) {
        if (people != null && !Demand.isPlausiblePerPerson(indoorLitres / people)) {
            explanation.caution(Caution.USE_PER_PERSON_IMPLAUSIBLE);
        }
    }

    private static Message perPerson(Country home) {
        return Message.of("household.lPerPersonPer", Text.number(home.usePerPersonLitres()), home.sourceKey());
    }

    private WeekdayMeans means(double share, double outdoorLitres, DayVariation variation, Explanation explanation) {
        if (weeklyUse != null) {
            questionUse(weeklyUse.stream().mapToDouble(VolumeQuantity::inBase).average().orElseThrow(), explanation);
            double[] d = weeklyUse.stream().mapToDouble(use -> use.inBase() * share + outdoorLitres).toArray();
            return new WeekdayMeans(d[0], d[1], d[2], d[3], d[4], d[5], d[6]);
        }
        double indoor = dailyUse != null ? dailyUse.inBase() : people * usePerPersonLitres(explanation);
        questionUse(indoor, explanation);
        double ratio = explanation.orDefault("household.weekendRatio", weekendRatio,
                variation.cv() == 0 ? 1 : WeekdayMeans.DEFAULT_WEEKEND_RATIO, number -> Message.of("pattern.value", number));
        return WeekdayMeans.ofWeek(indoor * share + outdoorLitres, ratio);
    }
}
