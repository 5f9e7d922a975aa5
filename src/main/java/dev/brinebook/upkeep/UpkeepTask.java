// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.upkeep;

import dev.brinebook.field.BreakthroughRun;
import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.softener.MaintenanceTask;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A task and its dates.
 *
 * @param item the task
 * @param everyDays days from one to the next; none where only a trigger makes it due
 * @param dates when it is due, from the first day to the last
 */
public record UpkeepTask(UpkeepItem item, OptionalInt everyDays, List<LocalDate> dates) {

    /** Days between looks at the salt. Source: [CP-UPKEEP]. */
    public static final int SALT_LEVEL_DAYS = 30;
    /** Days between services, tests and checks of flows, salt, injector and meter. Source: [CP-UPKEEP]. */
    public static final int YEARLY_DAYS = Days.PER_YEAR;
    /** Days between changes of a sediment filter. Source: [CP-UPKEEP]. */
    public static final int FILTER_DAYS = 182;
    /** Middle of 1 to 3 years of a brine tank with pellets; rock salt takes one. Source: [CP-UPKEEP]. */
    public static final int BRINE_TANK_DAYS = 2 * Days.PER_YEAR;
    /** Middle of 3 to 5 years. Source: [CP-UPKEEP]. */
    public static final int BATTERY_DAYS = 4 * Days.PER_YEAR;
    /** Low end of 5 to 8 years. Source: [CP-UPKEEP]. */
    public static final int SEALS_DAYS = 5 * Days.PER_YEAR;

    public UpkeepTask {
        dates = List.copyOf(dates);
    }

    /** Every task that the conditions call for, with its dates within {@code days} days from {@code first} on. */
    public static List<UpkeepTask> of(UpkeepConditions conditions, LocalDate first, int days) {
        Guard.positive(days, "days");
        return Arrays.stream(UpkeepItem.values()).flatMap(item -> of(item, conditions, first, days).stream()).toList();
    }

    private static Optional<UpkeepTask> of(UpkeepItem item, UpkeepConditions conditions, LocalDate first, int days) {
        return switch (item) {
            case SALT_LEVEL -> every(item, SALT_LEVEL_DAYS, first, days);
            case RESIN_CLEANER -> MaintenanceTask.fouls(conditions.water())
                    ? every(item, cleaningDays(conditions), first, days) : Optional.empty();
            case SEDIMENT_FILTER -> conditions.sedimentFilter() ? every(item, FILTER_DAYS, first, days) : Optional.empty();
            case BACTERIA_TEST -> conditions.water().supply() == Supply.PRIVATE_WELL ? bacteriaTest(conditions, first, days)
                    : Optional.empty();
            case HARDNESS_TEST, SALT_BOOKS, FLOWS, INJECTOR, METER -> every(item, YEARLY_DAYS, first, days);
            case BRINE_TANK -> every(item, conditions.rockSalt() ? YEARLY_DAYS : BRINE_TANK_DAYS, first, days);
            case CLOCK_BATTERY -> every(item, BATTERY_DAYS, first, days);
            case SEALS -> every(item, SEALS_DAYS, first, days);
            case RESIN -> Optional.of(resin(conditions, first, days));
            case SANITISE -> Optional.of(new UpkeepTask(item, OptionalInt.empty(), List.of()));
        };
    }

    /** By the iron and manganese that the resin holds, at least once a year. */
    private static int cleaningDays(UpkeepConditions conditions) {
        return (int) Math.min(YEARLY_DAYS, MaintenanceTask.daysBetweenCleanings(conditions.water().ironAndManganeseMgPerL(),
                conditions.bedVolumesPerDay()));
    }

    /** A test already done is taken as done on the first day, otherwise it is due then. */
    private static Optional<UpkeepTask> bacteriaTest(UpkeepConditions conditions, LocalDate first, int days) {
        Optional<UpkeepTask> yearly = every(UpkeepItem.BACTERIA_TEST, MaintenanceTask.DAYS_BETWEEN_BACTERIA_TESTS, first, days);
        return conditions.water().bacteriaTested() ? yearly : yearly.map(task -> new UpkeepTask(task.item, task.everyDays,
                Stream.concat(Stream.of(first), task.dates.stream()).toList()));
    }

    private static Optional<UpkeepTask> every(UpkeepItem item, int every, LocalDate first, int days) {
        List<LocalDate> dates = new ArrayList<>();
        for (int day = every; day <= days; day += every) {
            dates.add(first.plusDays(day));
        }
        return Optional.of(new UpkeepTask(item, OptionalInt.of(every), dates));
    }

    private static UpkeepTask resin(UpkeepConditions conditions, LocalDate first, int days) {
        int after = resinDays(conditions.sitesLeft(), conditions.yearlyLossShare());
        return new UpkeepTask(UpkeepItem.RESIN, OptionalInt.of(after), after <= days ? List.of(first.plusDays(after)) : List.of());
    }

    /**
     * Days until the resin has lost a quarter of its capacity.
     *
     * <pre>t = 365 ln(0.75 / s) / ln(1 − l),  0 where s ≤ 0.75</pre>
     *
     * <p>s share of the sites of new resin left now; l share lost in a year.
     * Validity: l from 0.01 to 0.05; fouling that cleaning takes off does not count.
     * Source: [UFC-3-240-13FN] replaced at 25 % loss, 1 to 5 % a year.
     * Deviation: the loss is in proportion to what is left, as in {@link dev.brinebook.resin.ResinEfficiency#remainingShare}.
     */
    public static int resinDays(double sitesLeft, double yearlyLossShare) {
        double years = StrictMath.log(BreakthroughRun.WORN_SHARE / sitesLeft) / StrictMath.log(1 - yearlyLossShare);
        return (int) Math.max(0, Math.round(Days.PER_YEAR * years));
    }
}
