// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.household.SoftenedShare;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.ServiceRemedy;
import dev.brinebook.softener.SetRight;
import dev.brinebook.softener.Softener;
import java.util.Optional;

/** Result of each improvement, with a meter that is set so that it costs least while the service standard is kept. */
final class Improvements {

    /** An improvement, or the reason why it is not possible, or what it lacks. */
    record Improved(Improvement improvement, Optional<SetRight> set, Optional<Obstacle> obstacle) {
    }

    private final Softener softener;
    private final DoseChoice.Option meter;
    private final MeterStart start;
    private final DesignConditions duty;
    private final RunningCost cost;

    Improvements(DoseChoice.Option meter, DesignConditions duty, RunningCost cost) {
        softener = meter.dosed().softener();
        start = meter.settings().start();
        this.meter = meter;
        this.duty = duty;
        this.cost = cost;
    }

    Improved of(Improvement improvement) {
        return switch (improvement) {
            case SECOND_TANK -> start == MeterStart.TWIN ? barred(improvement, Obstacle.TWIN_ALREADY)
                    : improved(improvement, DoseSearch.atOnce(softener, duty, cost, MeterStart.TWIN));
            case LARGER_BED -> ServiceRemedy.larger(softener).findFirst().map(larger -> improved(improvement, DoseSearch.cheapest(larger,
                    duty.forNewBed(), cost, start).best())).orElseGet(() -> barred(improvement, Obstacle.NO_LARGER_SIZE));
            case COUNTER_CURRENT -> counterCurrent();
            case MIXING_VALVE -> lacking(improvement, duty.with(1 - Ladder.SOFT_MG_PER_L / Math.max(2 * Ladder.SOFT_MG_PER_L,
                    duty.hardness().totalMgPerL()), 1), duty.practice().isByCountry() ? Obstacle.BLENDED_AS_USUAL
                    : Obstacle.SOME_HARDNESS_STAYS);
            case HOT_WATER_ONLY -> lacking(improvement, duty.with(1, SoftenedShare.HOT_SHARE), Obstacle.COLD_WATER_STAYS_HARD);
        };
    }

    private Improved counterCurrent() {
        if (!(softener.capacity() instanceof ColumnCapacity column)) {
            return barred(Improvement.COUNTER_CURRENT, Obstacle.NO_FULL_WATER_TEST);
        }
        if (column.direction() == Brining.Direction.COUNTER_CURRENT) {
            return barred(Improvement.COUNTER_CURRENT, Obstacle.COUNTER_CURRENT_ALREADY);
        }
        Softener other = new Softener(softener.bed(), softener.tankHeightMetres(), softener.salt(), column.counterCurrent(),
                softener.flows());
        if (!other.capacity().isKnownAt(other.salt(), CapacityTable.maxSaltDoseGramsPerLitre(other.salt()))) {
            return barred(Improvement.COUNTER_CURRENT, Obstacle.LEAKS);
        }
        return improved(Improvement.COUNTER_CURRENT, DoseSearch.cheapest(other, duty, cost, start).best());
    }

    private static Improved improved(Improvement improvement, DoseChoice.Option option) {
        return new Improved(improvement, Optional.of(SetRight.ofMeter(option)), Optional.empty());
    }

    /** At the dose of the meter on this bed: it is not as soft, so that no finer choice is called for. */
    private Improved lacking(Improvement improvement, DesignConditions less, Obstacle obstacle) {
        return new Improved(improvement, Optional.of(SetRight.ofMeter(DoseSearch.option(softener, meter.dosed().saltDoseGramsPerLitre(),
                less, cost, start))), Optional.of(obstacle));
    }

    private static Improved barred(Improvement improvement, Obstacle obstacle) {
        return new Improved(improvement, Optional.empty(), Optional.of(obstacle));
    }
}
