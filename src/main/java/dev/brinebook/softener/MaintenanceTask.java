// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Guard;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * Something to do for the water or the softener, beside regenerations and salt.
 *
 * @param date when
 * @param kind what
 */
public record MaintenanceTask(LocalDate date, Kind kind) {

    /** What is to be done. */
    public enum Kind {
        /** Have the water of a private well tested for bacteria: a softener does not disinfect. */
        BACTERIA_TEST,
        /** Look the softener through. */
        SERVICE,
        /** Look the softener through, and clean the resin of the iron and manganese that foul it. */
        SERVICE_WITH_RESIN_CLEANER,
        /** Clean the resin between two services. */
        RESIN_CLEANER
    }

    /** Days from one bacteria test of a private well to the next: once a year. Source: [CDC-WELL-TESTS]. */
    public static final int DAYS_BETWEEN_BACTERIA_TESTS = 365;
    /** Days from one service to the next; makers differ, and more iron asks for more. */
    public static final int ASSUMED_DAYS_BETWEEN_SERVICES = 365;

    /**
     * Iron and manganese that a litre of resin is fed between two cleanings, grams: what the 8,000 bed volumes that an ordinary bed
     * takes in a year bring at the limit of staining. No source was found.
     */
    public static final double ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE = 2.5;
    /** Days between two cleanings at the least: water that asks for more is to be treated first. */
    public static final int ASSUMED_FEWEST_DAYS_BETWEEN_CLEANINGS = 30;
    private static final double WHOLE_TOLERANCE = 1e-9;

    /** Cautions of a water that fouls resin. Source: [CP-RESIN-CARE]. */
    private static final Set<Caution> FOULS = Set.of(Caution.IRON_STAINS, Caution.MANGANESE_STAINS,
            Caution.IRON_NOT_DISSOLVED, Caution.IRON_BEFORE_RESIN, Caution.IRON_TREAT_FIRST);

    /**
     * What falls due from the first day to the day after the last, in order. A bacteria test already done is taken as done
     * on the first day, otherwise it is due then; the softener is taken as inspected on the first day.
     *
     * @param water the raw water
     * @param bedVolumesPerDay softened water of a mean day over the resin
     * @param first first day
     * @param days how many, 1 or more
     */
    public static List<MaintenanceTask> of(WaterAnalysis water, double bedVolumesPerDay, LocalDate first, int days) {
        Guard.positive(days, "days");
        List<MaintenanceTask> due = new ArrayList<>();
        if (water.supply() == Supply.PRIVATE_WELL) {
            add(due, Kind.BACTERIA_TEST, first, water.bacteriaTested() ? DAYS_BETWEEN_BACTERIA_TESTS : 0,
                    DAYS_BETWEEN_BACTERIA_TESTS, days);
        }
        boolean fouls = fouls(water);
        add(due, fouls ? Kind.SERVICE_WITH_RESIN_CLEANER : Kind.SERVICE, first, ASSUMED_DAYS_BETWEEN_SERVICES,
                ASSUMED_DAYS_BETWEEN_SERVICES, days);
        double between = daysBetweenCleanings(water.ironAndManganeseMgPerL(), bedVolumesPerDay);
        if (fouls && between < ASSUMED_DAYS_BETWEEN_SERVICES) {
            int every = (int) (between + WHOLE_TOLERANCE);
            add(due, Kind.RESIN_CLEANER, first, every, every, days);
            due.removeIf(one -> one.kind() == Kind.RESIN_CLEANER
                    && due.contains(new MaintenanceTask(one.date(), Kind.SERVICE_WITH_RESIN_CLEANER)));
        }
        due.sort(Comparator.comparing(MaintenanceTask::date).thenComparing(MaintenanceTask::kind));
        return List.copyOf(due);
    }

    /** Whether the iron or manganese of a water fouls resin, so that it has to be cleaned. */
    public static boolean fouls(WaterAnalysis water) {
        return WaterCautions.of(water).stream().anyMatch(FOULS::contains);
    }

    /**
     * Days after which a litre of resin was fed as much iron and manganese as between two cleanings.
     *
     * <pre>days = 1000 m / ((Fe + Mn) q),  at least 30</pre>
     *
     * <p>m g per litre of resin, {@value #ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE}; Fe, Mn mg/L; q bed volumes a day.
     * Validity: any; without iron or use there is no end of it.
     * Source: none at hand for m, see there; the balance is by definition.
     */
    public static double daysBetweenCleanings(double ironAndManganeseMgPerL, double bedVolumesPerDay) {
        return Math.max(ASSUMED_FEWEST_DAYS_BETWEEN_CLEANINGS, 1000 * ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE
                / (ironAndManganeseMgPerL * Guard.notNegative(bedVolumesPerDay, "bedVolumesPerDay")));
    }

    private static void add(List<MaintenanceTask> due, Kind kind, LocalDate first, int after, int every, int days) {
        for (int day = after; day <= days; day += every) {
            due.add(new MaintenanceTask(first.plusDays(day), kind));
        }
    }
}
