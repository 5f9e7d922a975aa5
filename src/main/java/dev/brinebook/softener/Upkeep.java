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
public record Upkeep(LocalDate date, Kind kind) {

    /** What is to be done. */
    public enum Kind {
        /** Have the water of a private well tested for bacteria: a softener does not disinfect. */
        BACTERIA_TEST,
        /** Look the softener through. */
        SERVICE,
        /** Look the softener through, and clean the resin of the iron and manganese that foul it. */
        SERVICE_WITH_RESIN_CLEANER
    }

    /** Days from one bacteria test of a private well to the next: once a year. Source: [CDC-WELL-TESTS]. */
    public static final int DAYS_BETWEEN_BACTERIA_TESTS = 365;
    /** Days from one service to the next; makers differ, and more iron asks for more. */
    public static final int ASSUMED_DAYS_BETWEEN_SERVICES = 365;

    /** Cautions of a water that fouls resin. Source: [CP-RESIN-CARE]. */
    private static final Set<Caution> FOULS = Set.of(Caution.IRON_STAINS, Caution.MANGANESE_STAINS,
            Caution.IRON_NOT_DISSOLVED, Caution.IRON_BEFORE_RESIN);

    /**
     * What falls due from the first day to the day after the last, in order. A bacteria test that was made counts as made
     * on the first day, one that was not is due then; the softener counts as looked through on the first day.
     *
     * @param water the raw water
     * @param first first day
     * @param days how many, 1 or more
     */
    public static List<Upkeep> of(WaterAnalysis water, LocalDate first, int days) {
        Guard.positive(days, "days");
        List<Upkeep> due = new ArrayList<>();
        if (water.supply() == Supply.PRIVATE_WELL) {
            add(due, Kind.BACTERIA_TEST, first, water.bacteriaTested() ? DAYS_BETWEEN_BACTERIA_TESTS : 0,
                    DAYS_BETWEEN_BACTERIA_TESTS, days);
        }
        boolean fouls = WaterCautions.of(water).stream().anyMatch(FOULS::contains);
        add(due, fouls ? Kind.SERVICE_WITH_RESIN_CLEANER : Kind.SERVICE, first, ASSUMED_DAYS_BETWEEN_SERVICES,
                ASSUMED_DAYS_BETWEEN_SERVICES, days);
        due.sort(Comparator.comparing(Upkeep::date).thenComparing(Upkeep::kind));
        return List.copyOf(due);
    }

    private static void add(List<Upkeep> due, Kind kind, LocalDate first, int after, int every, int days) {
        for (int day = after; day <= days; day += every) {
            due.add(new Upkeep(first.plusDays(day), kind));
        }
    }
}
