// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.RowNote.Code;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the readings of a meter come to.
 *
 * @param days use of each day, missing days known as such; absent when no day is whole, or the span is too long
 * @param spanDays from the first whole day to the last
 * @param gaps the runs of missing days, with the total of each where the meter shows it
 * @param usualStep the usual time from one reading to the next
 * @param nightFlow the least flow of each night, where readings are close enough
 * @param notes what was done about rows, in the order of the rows
 */
public record MeterHistory(Optional<MeteredDays> days, long spanDays, List<MeterGap> gaps, Duration usualStep,
        NightFlow nightFlow, List<RowNote> notes) {

    /** A step longer than this many usual steps has readings missing. */
    private static final double ASSUMED_STEPS_OF_A_HOLE = 1.5;

    public MeterHistory {
        gaps = List.copyOf(gaps);
        notes = List.copyOf(notes);
    }

    /** The readings put in order, corrected where that is certain, and split into days. */
    public static MeterHistory of(List<MeterReading> readings, Meter meter) {
        List<RowNote> notes = new ArrayList<>();
        List<TimedReading> timed = ReadingTimes.inOrder(readings, meter.zone(), notes);
        Duration usual = meter.interval().filter(given -> meter.kind() == Kind.VOLUME)
                .orElseGet(() -> VolumeDraws.usualStep(timed, meter.zone()));
        List<MeteredUse> draws = meter.kind() == Kind.REGISTER ? RegisterDraws.of(timed, meter, notes)
                : VolumeDraws.of(timed, meter, notes);
        bridged(draws, usual, notes);
        DailySplit split = new DailySplit(draws, meter.zone(), usual, notes);
        notes.sort(Comparator.comparingInt(RowNote::row).thenComparing(RowNote::code));
        return new MeterHistory(split.days(), split.span(), split.gaps(), usual, NightFlow.of(draws, meter.zone()), notes);
    }

    /** A longer time between two readings leaves its days missing. */
    public Duration longestBetweenReadings() {
        return DailySplit.longest(usualStep);
    }

    /** Gaps that leave no day missing: the register gives the total, which is split in proportion to time. */
    private static void bridged(List<MeteredUse> draws, Duration usual, List<RowNote> notes) {
        Duration longest = DailySplit.longest(usual);
        for (MeteredUse draw : draws) {
            if (draw.time().toSeconds() > ASSUMED_STEPS_OF_A_HOLE * usual.toSeconds() && draw.time().compareTo(longest) <= 0) {
                notes.add(new RowNote(draw.row(), Code.BRIDGED));
            }
        }
    }
}
