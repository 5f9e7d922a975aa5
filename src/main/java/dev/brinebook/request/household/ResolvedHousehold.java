// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.SoftenedShare;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The household of a request in the domain: its use, and how it varies. Whatever the request leaves out is resolved, and recorded.
 *
 * @param request without violations
 */
public record ResolvedHousehold(HouseholdRequest request) {

    private static final String USE_UNCERTAINTY = "/household/useUncertainty";
    private static final String MONTH_FACTORS = "/household/monthFactors";
    private static final String LEFT_HARD = "/household/leftHard";
    private static final String WEEKEND_RATIO = "/household/weekendRatio";

    /** The softened demand in SI, with every default recorded in {@code explanation}. */
    public Demand toDomain(Explanation explanation) {
        Demand demand = demand(explanation);
        if (demand.meanLitres() > Demand.MOST_OF_A_HOUSEHOLD_LITRES && request.fixtures() == null && request.peakFlow() == null) {
            explanation.caution(Caution.COMMERCIAL_USE);
        }
        return demand;
    }

    private Demand demand(Explanation explanation) {
        explanation.resolve("/household/country", request.country(), Country.UNITED_STATES, "OWN-ASSUMPTION");
        double share = softenedShare(explanation);
        double outdoorLitres = explanation.resolve(request.outdoorUse(), Demand.DEFAULT_OUTDOOR_USE_LITRES,
                Resolved.of("/household/outdoorUse",
                AnswerUnits.of(explanation).volume(Demand.DEFAULT_OUTDOOR_USE_LITRES)).byDefault("CP-INSTALLATION"));
        HouseholdFlows flows = HouseholdFlows.of(request, explanation);
        if (request.dailySeries() != null) {
            MeteredDays indoor = request.dailySeries().toDays(explanation);
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

    private double usualLevelSpread() {
        if (request.dayToDayVariation() != null && request.dayToDayVariation().signum() == 0) {
            return 0;
        }
        return request.dailyUse() == null && request.weeklyUse() == null ? UseChange.LEVEL_SPREAD_OF_PEOPLE_ALONE
                : request.monthFactors() == null ? UseChange.USUAL_LEVEL_SPREAD : UseChange.LEVEL_SPREAD_WITH_MONTHS;
    }

    private double usualScatterSpread() {
        return request.dayToDayVariation() == null ? UseChange.USUAL_SCATTER_SPREAD : 0;
    }

    /** How far the home may differ from its data: usual values unless the request gives others. */
    private UseChange change(double usualLevel, double usualScatter, Explanation explanation) {
        double level = usual("/household/levelSpread", request.levelSpread(), usualLevel, explanation);
        double scatter = usual("/household/scatterSpread", request.scatterSpread(), level == 0 ? 0 : usualScatter, explanation);
        return new UseChange(level, scatter, usual("/household/dayCorrelation", request.dayCorrelation(),
                level == 0 ? 0 : UseChange.USUAL_DAY_CORRELATION, explanation));
    }

    /** A number that measured homes give; 0, where the request says that nothing changes, is not measured. */
    private static double usual(String pointer, BigDecimal given, double measured, Explanation explanation) {
        return explanation.resolve(given, measured, Resolved.of(pointer, measured, null)
                .byDefault(measured == 0 ? "OWN-ASSUMPTION" : "DAIAD"));
    }

    /** By how much the mean use may be wrong, as a share of it. */
    public double useUncertaintyShare(Demand demand, Explanation explanation) {
        if (demand.measured().isPresent()) {
            double share = HouseholdRequest.uncertaintyShare(demand.model().change());
            return explanation.resolve(request.useUncertainty(), share, Resolved.of(USE_UNCERTAINTY, share, null).estimated("DAIAD")
                    .noting(Message.of("assumed.household.spreadLevelUse")));
        }
        return explanation.resolve(request.useUncertainty(), Demand.ASSUMED_USE_UNCERTAINTY_SHARE, Resolved.of(USE_UNCERTAINTY,
                Demand.ASSUMED_USE_UNCERTAINTY_SHARE, null).byDefault("OWN-ASSUMPTION"));
    }

    /** What to expect of the household that the days were measured in. */
    private UseModel fitted(MeteredDays indoor, Explanation explanation) {
        OptionalDouble byPeople = request.people() == null ? OptionalDouble.empty()
                : OptionalDouble.of(request.people() * usePerPersonLitres(explanation));
        MeteredDays latest = UseEstimate.of(indoor).latest(indoor);
        HouseholdFit fit = HouseholdFit.of(latest, byPeople);
        FittedSeries.explain(fit, latest, byPeople, explanation);
        UseChange byDays = fit.model().change();
        if (request.levelSpread() == null) {
            FittedSeries.explainSpread("/household/levelSpread", byDays.levelSpread(), fit, explanation);
        }
        if (request.scatterSpread() == null && (request.levelSpread() == null || request.levelSpread().signum() > 0)) {
            FittedSeries.explainSpread("/household/scatterSpread", byDays.scatterSpread(), fit, explanation);
        }
        return fit.model().with(change(byDays.levelSpread(), byDays.scatterSpread(), explanation));
    }

    private List<Double> months(Explanation explanation) {
        if (request.monthFactors() == null) {
            explanation.assume(Resolved.inWords(MONTH_FACTORS, Message.of("assumed.household.sameUseEveryMonth"))
                    .byDefault("OWN-ASSUMPTION"));
            return UseModel.EVEN_MONTHS;
        }
        explanation.assume(Resolved.ofCode(MONTH_FACTORS, request.monthFactors().stream().map(BigDecimal::toPlainString)
                .collect(Collectors.joining(", "))).noting(Message.of("assumed.household.givenDividedTheirMean")));
        return request.relativeMonths();
    }

    private Occupancy occupancy(Explanation explanation) {
        explanation.resolve("/household/occupancy/pattern", request.occupancy() == null ? null : request.occupancy().pattern(),
                OccupancyRequest.Pattern.ALWAYS, "OWN-ASSUMPTION");
        return request.occupancy() == null ? Occupancy.ALWAYS : request.occupancy().toDomain();
    }

    private double softenedShare(Explanation explanation) {
        var branches = request.leftHard() == null ? Set.<SoftenedShare.Branch>of() : Set.copyOf(request.leftHard());
        double share = SoftenedShare.of(branches);
        Resolved onlyOutdoors = Resolved.inWords(LEFT_HARD, Message.of("assumed.household.outdoorTapsOnly"));
        explanation.assume(request.leftHard() == null ? onlyOutdoors.byDefault("CP-INSTALLATION") : branches.isEmpty() ? onlyOutdoors
                : Resolved.ofCode(LEFT_HARD, request.leftHard().stream().map(WireNames::of).sorted().collect(Collectors.joining(", ")))
                        .noting(Message.of("assumed.household.indoorUseSoftened", Text.digits(100 * share))));
        return share;
    }

    private DayVariation variation(Explanation explanation) {
        DayVariation usual = request.people() == null ? DayVariation.UNKNOWN_PERSONS : DayVariation.forPersons(request.people());
        double cv = usual("/household/dayToDayVariation", request.dayToDayVariation(), usual.cv(), explanation);
        return cv == usual.cv() ? usual : DayVariation.ofCv(cv);
    }

    private double usePerPersonLitres(Explanation explanation) {
        Country home = Country.orAssumed(request.country());
        return explanation.resolve(request.usePerPerson(), home.usePerPersonLitres(), Resolved.of("/household/usePerPerson",
                AnswerUnits.of(explanation).volume(home.usePerPersonLitres())).byCountry(home.sourceKey()));
    }

    /** Asks for people, unit or a leak where a person uses what hardly anybody does. */
    private void questionUse(double indoorLitres, Explanation explanation) {
        if (request.people() != null && !Demand.isPlausiblePerPerson(indoorLitres / request.people())) {
            explanation.caution(Caution.USE_PER_PERSON_IMPLAUSIBLE);
        }
    }

    private WeekdayMeans means(double share, double outdoorLitres, DayVariation variation, Explanation explanation) {
        if (request.weeklyUse() != null) {
            questionUse(request.weeklyUse().stream().mapToDouble(VolumeQuantity::inBase).average().orElseThrow(), explanation);
            double[] d = request.weeklyUse().stream().mapToDouble(use -> use.inBase() * share + outdoorLitres).toArray();
            return new WeekdayMeans(d[0], d[1], d[2], d[3], d[4], d[5], d[6]);
        }
        double indoor = request.dailyUse() != null ? request.dailyUse().inBase() : request.people() * usePerPersonLitres(explanation);
        questionUse(indoor, explanation);
        Resolved usual = variation.cv() == 0 ? Resolved.of(WEEKEND_RATIO, 1, null).byDefault("OWN-ASSUMPTION")
                : Resolved.of(WEEKEND_RATIO, WeekdayMeans.DEFAULT_WEEKEND_RATIO, null).byDefault("DAIAD");
        return WeekdayMeans.ofWeek(indoor * share + outdoorLitres, explanation.resolve(request.weekendRatio(), usual));
    }
}
