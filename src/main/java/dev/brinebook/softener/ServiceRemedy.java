// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.ResinBed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What would keep to the service standard where the softener cannot, whatever is set on it.
 *
 * @param kind what
 * @param softener the softener with it; of twin beds each of the two
 * @param saltDoseGramsPerLitre the dose with it
 * @param hardnessMgPerL compensated hardness of the water with it
 * @param year expected totals of a year with it
 * @param costPerYear salt and regeneration water of that year
 */
public record ServiceRemedy(Kind kind, Softener softener, double saltDoseGramsPerLitre, double hardnessMgPerL, YearlyTotals year,
        double costPerYear) {

    /** What would help. */
    public enum Kind {
        /** The smallest standard bed that is large enough. */
        LARGER_BED,
        /** A second bed of the same size. */
        TWIN_BEDS,
        /** A treatment before the softener that removes this amount of hardness or iron. */
        TREATED_WATER
    }

    private static final int HALVINGS = 12;
    /** A size converted from another unit is the same. */
    private static final double SAME_SIZE_SHARE = 0.01;

    /** Remedies, where there are any; empty where the standard is met. */
    public static List<ServiceRemedy> of(DoseChoice choice, DesignConditions duty, RunningCost cost) {
        List<ServiceRemedy> remedies = new ArrayList<>();
        if (!choice.best().settings().keepsStandard()) {
            Softener softener = choice.best().dosed().softener();
            largerBed(softener, duty, cost).map(option -> metered(Kind.LARGER_BED, option, duty.hardness().totalMgPerL()))
                    .ifPresent(remedies::add);
            twin(softener, duty, cost).ifPresent(remedies::add);
            treated(softener, duty, cost).ifPresent(remedies::add);
        }
        return remedies;
    }

    /** The smallest standard bed that is larger and keeps to the service standard, metered. */
    public static Optional<DoseChoice.Option> largerBed(Softener softener, DesignConditions duty, RunningCost cost) {
        return largerBeds(softener, larger -> true, duty, cost).findFirst();
    }

    /** Every standard bed that is larger, {@code wanted}, and keeps to the service standard, metered; the smallest first. */
    public static Stream<DoseChoice.Option> largerBeds(Softener softener, Predicate<Softener> wanted, DesignConditions duty,
            RunningCost cost) {
        return larger(softener).filter(wanted)
                .map(larger -> DoseSearch.cheapest(larger, duty.forNewBed(), cost).best())
                .filter(option -> option.holdsEndPoint() && option.settings().keepsStandard());
    }

    /** Standard tanks that hold more, each with the new resin it is sold with, in the place of the softener; smallest first. */
    public static Stream<Softener> larger(Softener softener) {
        return StandardTank.all().stream().filter(tank -> tank.resinLitres() > (1 + SAME_SIZE_SHARE) * softener.bed().resinLitres())
                .map(tank -> new Softener(new ResinBed(tank.resinLitres(), tank.diameterMetres()), tank.heightMetres(),
                        softener.salt(), softener.capacity().ofNewResin(), softener.flows().ofSiteOnly()));
    }

    private static ServiceRemedy metered(Kind kind, DoseChoice.Option option, double hardnessMgPerL) {
        return new ServiceRemedy(kind, option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), hardnessMgPerL,
                option.year(), option.costPerYear());
    }

    private static Optional<ServiceRemedy> twin(Softener softener, DesignConditions duty, RunningCost cost) {
        DoseChoice.Option best = DoseSearch.atOnce(softener, duty, cost, MeterStart.TWIN);
        return best.settings().keepsStandard() ? Optional.of(metered(Kind.TWIN_BEDS, best, duty.hardness().totalMgPerL()))
                : Optional.empty();
    }

    /** The hardest water for which this bed is enough, by halving; what takes the hardness out is not priced. */
    private static Optional<ServiceRemedy> treated(Softener softener, DesignConditions duty, RunningCost cost) {
        double enough = 0;
        double tooHard = 1;
        DoseChoice.Option found = null;
        for (int i = 0; i < HALVINGS; i++) {
            double share = 0.5 * (enough + tooHard);
            DoseChoice.Option best = DoseSearch.cheapest(softener, duty.with(share, 1), cost).best();
            if (best.settings().keepsStandard() && best.holdsEndPoint()) {
                enough = share;
                found = best;
            } else {
                tooHard = share;
            }
        }
        return found == null ? Optional.empty()
                : Optional.of(metered(Kind.TREATED_WATER, found, duty.with(enough, 1).hardness().totalMgPerL()));
    }
}
