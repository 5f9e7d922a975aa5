// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.HouseholdFit;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.request.household.OccupancyRequest;
import dev.brinebook.savings.UseScatter;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The scatter of a household's days from what a request says of it. */
final class HomeScatter {

    private HomeScatter() {
    }

    /** The scatter that daily readings of a period show, where nothing is said of it, else by {@link #of}. */
    static UseScatter of(SavingsVerificationRequest request, Explanation explanation) {
        Optional<MeteredDays> days = Stream.of(Optional.of(request.before()), Optional.ofNullable(request.after()))
                .flatMap(Optional::stream).map(SavingsPeriodRequest::meter).filter(Objects::nonNull).map(MeteredPeriodRequest::days)
                .flatMap(Optional::stream).findFirst();
        if (days.isEmpty() || request.dayToDayVariation() != null || request.occupancy() != null) {
            return of(request.people(), request.dayToDayVariation(), request.occupancy(), "/", explanation);
        }
        UseModel model = HouseholdFit.of(days.get(), OptionalDouble.empty()).model();
        explanation.assume(Resolved.of("/dayToDayVariation", model.cv(), null).estimated("DAIAD"));
        explanation.assume(Resolved.of("occupiedShare", model.occupiedShare(), null).estimated("ANDERSON-GOODMAN"));
        explanation.assume(Resolved.of("levelSpread", model.change().levelSpread(), null).estimated("DAIAD"));
        explanation.assume(Resolved.of("dayCorrelation", model.change().dayCorrelation(), null).estimated("DAIAD"));
        return UseScatter.of(model.cv(), model.occupancy(), model.change());
    }

    /**
     * What is null is taken as usual, and recorded.
     *
     * @param at where the request has the scatter and the occupancy; empty where it has neither
     */
    static UseScatter of(Integer people, BigDecimal dayToDayVariation, OccupancyRequest occupancy, String at, Explanation explanation) {
        double usual = people == null ? DayVariation.UNKNOWN_PERSONS_CV : DayVariation.forPersons(people).cv();
        double cv = explanation.resolve(dayToDayVariation, Resolved.of(at + "dayToDayVariation", usual, null).byDefault("DAIAD"));
        explanation.resolve(at + "occupancy/pattern", occupancy == null ? null : occupancy.pattern(),
                OccupancyRequest.Pattern.USUAL_ABSENCES, "DAIAD");
        explanation.assume(Resolved.of("levelSpread", UseChange.USUAL_LEVEL_SPREAD, null).byDefault("DAIAD"));
        explanation.assume(Resolved.of("dayCorrelation", UseChange.USUAL_DAY_CORRELATION, null).byDefault("DAIAD"));
        return UseScatter.of(cv, occupancy == null ? Occupancy.Chain.USUAL : occupancy.toDomain(), new UseChange(
                UseChange.USUAL_LEVEL_SPREAD, dayToDayVariation == null ? UseChange.USUAL_SCATTER_SPREAD : 0,
                UseChange.USUAL_DAY_CORRELATION));
    }
}
