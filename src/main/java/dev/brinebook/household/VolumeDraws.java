// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.RowNote.Code;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Metered use from interval volumes, each recorded at the start of its interval. */
final class VolumeDraws {

    private static final Duration DAY = Duration.ofDays(1);

    private VolumeDraws() {
    }

    /**
     * The metered use, in order. An interval ends after the given length, or when the next begins if that is sooner; one of 24
     * hours ends at the same time of the next day, so that days of 23 and 25 hours stay whole.
     */
    static List<MeteredUse> of(List<TimedReading> readings, Meter meter, List<RowNote> notes) {
        Duration length = meter.interval().orElseGet(() -> usualStep(readings, meter.zone()));
        List<MeteredUse> draws = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            TimedReading reading = readings.get(i);
            Instant end = length.equals(DAY) ? reading.moment().atZone(meter.zone()).plusDays(1).toInstant()
                    : reading.moment().plus(length);
            if (i + 1 < readings.size() && readings.get(i + 1).moment().isBefore(end)) {
                end = readings.get(i + 1).moment();
            }
            MeteredUse draw = new MeteredUse(reading.moment(), end, reading.value() * meter.litresPerUnit(), reading.row());
            if (Meter.plausible(draw.litres(), draw.time())) {
                draws.add(draw);
            } else {
                notes.add(new RowNote(reading.row(), Code.VOLUME_TOO_LARGE));
            }
        }
        return draws;
    }

    /**
     * The most frequent time from one reading to the next on the clock of the place, where midnights are always a day
     * apart; the shortest of several, and a day when there is none.
     */
    static Duration usualStep(List<TimedReading> readings, ZoneId zone) {
        Map<Duration, Integer> counts = new TreeMap<>();
        for (int i = 1; i < readings.size(); i++) {
            Duration step = Duration.between(readings.get(i - 1).moment().atZone(zone).toLocalDateTime(),
                    readings.get(i).moment().atZone(zone).toLocalDateTime());
            if (step.compareTo(Duration.ZERO) > 0) {
                counts.merge(step, 1, Integer::sum);
            }
        }
        Duration usual = DAY;
        int most = 0;
        for (Map.Entry<Duration, Integer> entry : counts.entrySet()) {
            if (entry.getValue() > most) {
                usual = entry.getKey();
                most = entry.getValue();
            }
        }
        return usual;
    }
}
