// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.RandomStream;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** On which days somebody is at home. On a vacant day nothing is used. */
public sealed interface Occupancy {

    /** Somebody is always at home. */
    Occupancy ALWAYS = new Calendar(List.of(), true);

    /** Whether the first day of a run is occupied. */
    boolean first(LocalDate date, RandomStream stream);

    /** Whether a day is occupied, after one that was or was not. */
    boolean next(LocalDate date, boolean before, RandomStream stream);

    /** The chain of which the long run is made; absent where nobody is ever away. */
    Optional<Chain> longRun();

    /** Share of the days that are occupied in the long run; by a calendar, of the days of a year that it names. */
    double occupiedShare(LocalDate firstDate, int days);

    /**
     * A chain of two states: each day an occupied house is left with one probability, and a vacant one returned to with
     * another.
     *
     * <pre>share occupied = r / (l + r),  mean stay = 1 / l,  mean absence = 1 / r</pre>
     *
     * <p>l leave, r return, probabilities a day.
     * Validity: both above 0 and at most 1.
     * Source: [DAIAD] l 0.021, r 0.32: 6 % of days vacant, seven absences of three days a year.
     * Deviation: none; the run starts in the long-run share.
     *
     * @param leavePerDay probability that an occupied house is vacant the next day
     * @param returnPerDay probability that a vacant house is occupied the next day
     */
    record Chain(double leavePerDay, double returnPerDay) implements Occupancy {

        /** One absence in three years of measured days is above it. */
        public static final double MIN_PROBABILITY = 0.0005;
        /** Absences of ordinary households. Source: [DAIAD]. */
        public static final Chain USUAL = new Chain(0.021, 0.32);
        /** A holiday home with stays of three days and 30 % of the days occupied: no source was found. */
        public static final Chain ASSUMED_HOLIDAY_HOME = new Chain(1 / 3.0, 1 / 7.0);

        public Chain {
            Guard.within(leavePerDay, MIN_PROBABILITY, 1, "leavePerDay");
            Guard.within(returnPerDay, MIN_PROBABILITY, 1, "returnPerDay");
        }

        @Override
        public boolean first(LocalDate date, RandomStream stream) {
            return stream.happens(occupiedShare());
        }

        @Override
        public boolean next(LocalDate date, boolean before, RandomStream stream) {
            return before ? !stream.happens(leavePerDay) : stream.happens(returnPerDay);
        }

        @Override
        public double occupiedShare(LocalDate firstDate, int days) {
            return occupiedShare();
        }

        @Override
        public Optional<Chain> longRun() {
            return Optional.of(this);
        }

        double occupiedShare() {
            return returnPerDay / (leavePerDay + returnPerDay);
        }
    }

    /**
     * Spells known beforehand.
     *
     * @param spells the spells, which may overlap
     * @param absences whether somebody is away in the spells and at home else, or the other way round
     */
    record Calendar(List<Spell> spells, boolean absences) implements Occupancy {

        public static final int MAX_SPELLS = 100;

        public Calendar {
            spells = List.copyOf(spells);
            Guard.within(spells.size(), 0, MAX_SPELLS, "number of spells");
        }

        @Override
        public boolean first(LocalDate date, RandomStream stream) {
            return absences != isInASpell(date);
        }

        /** Without a stream or an iterator: it is called for every day of thousands of years. */
        private boolean isInASpell(LocalDate date) {
            for (int i = 0; i < spells.size(); i++) {
                if (spells.get(i).includes(date)) {
                    return true;
                }
            }
            return false;
        }

        @Override
        public boolean next(LocalDate date, boolean before, RandomStream stream) {
            return first(date, stream);
        }

        /**
         * Stays and absences as long and as frequent as those of the calendar, which is taken to be of a year, or of all the
         * days from its first spell to its last where these are more. On which weekdays they fall is left out.
         */
        @Override
        public Optional<Chain> longRun() {
            List<Spell> ordered = spells.stream().sorted(Comparator.comparing(Spell::from)).toList();
            if (ordered.isEmpty()) {
                return absences ? Optional.empty() : Optional.of(new Chain(1, Chain.MIN_PROBABILITY));
            }
            List<Spell> apart = new ArrayList<>();
            for (Spell spell : ordered) {
                Spell before = apart.isEmpty() ? null : apart.get(apart.size() - 1);
                if (before != null && !spell.from().isAfter(before.to().plusDays(1))) {
                    apart.set(apart.size() - 1, new Spell(before.from(),
                            spell.to().isAfter(before.to()) ? spell.to() : before.to()));
                } else {
                    apart.add(spell);
                }
            }
            long inSpells = apart.stream().mapToLong(Spell::days).sum();
            long all = Math.max(Days.PER_YEAR, new Spell(apart.get(0).from(), apart.get(apart.size() - 1).to()).days());
            double end = chance(apart.size(), inSpells);
            double start = chance(apart.size(), all - inSpells);
            return Optional.of(absences ? new Chain(start, end) : new Chain(end, start));
        }

        /** Observed frequency of a change in a number of days, bounded to the probabilities that a chain allows. */
        private static double chance(int often, long days) {
            return days <= often ? 1 : Math.max(Chain.MIN_PROBABILITY, (double) often / days);
        }

        @Override
        public double occupiedShare(LocalDate firstDate, int days) {
            if (spells.isEmpty()) {
                return absences ? 1 : 0;
            }
            int occupied = 0;
            for (int day = 0; day < days; day++) {
                occupied += first(firstDate.plusDays(day), null) ? 1 : 0;
            }
            return (double) occupied / days;
        }
    }

    /** A run of days, the last included. */
    record Spell(LocalDate from, LocalDate to) {

        public Spell {
            if (to.isBefore(from)) {
                throw new IllegalArgumentException("to must not be before from, " + from + ", was " + to);
            }
        }

        long days() {
            return ChronoUnit.DAYS.between(from, to) + 1;
        }

        boolean includes(LocalDate date) {
            return !date.isBefore(from) && !date.isAfter(to);
        }
    }
}
