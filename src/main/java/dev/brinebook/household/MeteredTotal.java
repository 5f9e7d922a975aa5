// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.Meter.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Water of all readings together, however far apart they are.
 *
 * @param litres that passed
 * @param days that it took; times whose use is not known are in neither
 */
public record MeteredTotal(double litres, double days) {

    /** The total of readings, corrected as in {@link MeterHistory}; empty where no two of them belong together. */
    public static Optional<MeteredTotal> of(List<MeterReading> readings, Meter meter) {
        List<RowNote> notes = new ArrayList<>();
        List<TimedReading> timed = ReadingTimes.inOrder(readings, meter.zone(), notes);
        List<MeteredUse> uses = meter.kind() == Kind.REGISTER ? RegisterDraws.of(timed, meter, notes) : VolumeDraws.of(timed, meter, notes);
        double seconds = uses.stream().mapToLong(use -> use.time().toSeconds()).sum();
        return uses.isEmpty() ? Optional.empty() : Optional.of(new MeteredTotal(uses.stream().mapToDouble(MeteredUse::litres).sum(),
                seconds / Duration.ofDays(1).toSeconds()));
    }

    public double litresPerDay() {
        return litres / days;
    }
}
