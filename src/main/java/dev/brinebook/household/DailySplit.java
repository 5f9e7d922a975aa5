// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.RowNote.Code;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Splits metered use into local days, which have 23 or 25 hours where the clock changes. */
final class DailySplit {

    /** A longer time between readings leaves its days missing: the longest day there is. */
    static final Duration LONGEST_BETWEEN_READINGS = Duration.ofHours(25);
    /** The same for a meter read once or twice a day, by hand and not always at the same hour. */
    static final Duration ASSUMED_LONGEST_BY_HAND = Duration.ofHours(36);
    private static final Duration BY_HAND = Duration.ofHours(12);

    /** What the readings say of one day. */
    private static final class Day {
        private long seconds;
        private double litres;
        private int row;
    }

    private final ZoneId zone;
    private final List<MeteredUse> draws;
    private final TreeMap<LocalDate, Day> days = new TreeMap<>();

    /**
     * Splits each metered use that is short enough, in proportion to time.
     *
     * <pre>V(day) = sum over uses of V t(day) / t</pre>
     *
     * <p>V litres of a metered use; t its duration; t(day) the part of it within the day. A day is kept when uses fill it from
     * midnight to midnight. Source: [CP-METER-READING].
     *
     * @param usual the usual time between readings, which decides how long is too long
     */
    DailySplit(List<MeteredUse> draws, ZoneId zone, Duration usual, List<RowNote> notes) {
        this.zone = zone;
        this.draws = draws;
        Duration longest = longest(usual);
        draws.stream().filter(draw -> draw.time().compareTo(longest) <= 0).forEach(this::split);
        days.entrySet().removeIf(entry -> entry.getValue().seconds < length(entry.getKey()));
        days.entrySet().removeIf(entry -> {
            boolean tooLarge = entry.getValue().litres > Demand.MAX_MEASURED_DAY_LITRES;
            if (tooLarge) {
                notes.add(new RowNote(entry.getValue().row, Code.DAY_TOO_LARGE));
            }
            return tooLarge;
        });
    }

    static Duration longest(Duration usual) {
        return usual.compareTo(BY_HAND) < 0 ? LONGEST_BETWEEN_READINGS : ASSUMED_LONGEST_BY_HAND;
    }

    private void split(MeteredUse draw) {
        LocalDate last = draw.to().atZone(zone).toLocalDate();
        for (LocalDate date = draw.from().atZone(zone).toLocalDate(); !date.isAfter(last); date = date.plusDays(1)) {
            Day day = days.computeIfAbsent(date, d -> new Day());
            long seconds = draw.secondsWithin(start(date), start(date.plusDays(1)));
            day.seconds += seconds;
            day.litres += draw.litres() * seconds / draw.time().toSeconds();
            day.row = draw.row();
        }
    }

    /** From the first whole day to the last; 0 when there is none. */
    long span() {
        return days.isEmpty() ? 0 : ChronoUnit.DAYS.between(days.firstKey(), days.lastKey()) + 1;
    }

    /** The days, when there is one and they are not too many. */
    Optional<MeteredDays> days() {
        if (days.isEmpty() || span() > Days.MAX_DAYS) {
            return Optional.empty();
        }
        List<OptionalDouble> litres = new ArrayList<>();
        for (LocalDate date = days.firstKey(); !date.isAfter(days.lastKey()); date = date.plusDays(1)) {
            Day day = days.get(date);
            litres.add(day == null ? OptionalDouble.empty() : OptionalDouble.of(day.litres));
        }
        return Optional.of(MeteredDays.of(days.firstKey(), litres));
    }

    /** The gaps of {@link #days}, in order. */
    List<MeterGap> gaps() {
        List<MeterGap> gaps = new ArrayList<>();
        LocalDate before = null;
        for (LocalDate date : days.keySet()) {
            if (before != null && before.plusDays(1).isBefore(date)) {
                gaps.add(gap(before.plusDays(1), date.minusDays(1)));
            }
            before = date;
        }
        return gaps;
    }

    /** A metered use too long to be split gives the total over all days of a gap, if such uses fill it. */
    private MeterGap gap(LocalDate first, LocalDate last) {
        Instant start = start(first);
        Instant end = start(last.plusDays(1));
        long seconds = 0;
        double litres = 0;
        for (MeteredUse draw : draws) {
            seconds += draw.secondsWithin(start, end);
            litres += draw.litresWithin(start, end);
        }
        boolean whole = seconds == Duration.between(start, end).toSeconds();
        return new MeterGap(first, last, whole ? OptionalDouble.of(litres) : OptionalDouble.empty());
    }

    private long length(LocalDate date) {
        return Duration.between(start(date), start(date.plusDays(1))).toSeconds();
    }

    private Instant start(LocalDate date) {
        return date.atStartOfDay(zone).toInstant();
    }
}
