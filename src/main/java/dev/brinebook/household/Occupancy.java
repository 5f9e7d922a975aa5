package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.RandomStream;
import java.time.LocalDate;
import java.util.List;

/** On which days somebody is at home. On a vacant day nothing is used. */
public sealed interface Occupancy {

    /** Somebody is always at home. */
    Occupancy ALWAYS = new Calendar(List.of(), true);

    /** Whether the first day of a run is occupied. */
    boolean first(LocalDate date, RandomStream stream);

    /** Whether a day is occupied, after one that was or was not. */
    boolean next(LocalDate date, boolean before, RandomStream stream);

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
        /** A holiday home with stays of three days and 30 % of the days occupied: no source is at hand. */
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

        /** Without a stream or an iterator: it is asked for every day of thousands of years. */
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

        @Override
        public double occupiedShare(LocalDate firstDate, int days) {
            return (double) firstDate.datesUntil(firstDate.plusDays(days)).filter(date -> first(date, null)).count() / days;
        }
    }

    /** A run of days, the last included. */
    record Spell(LocalDate from, LocalDate to) {

        public Spell {
            if (to.isBefore(from)) {
                throw new IllegalArgumentException("to must not be before from, " + from + ", was " + to);
            }
        }

        boolean includes(LocalDate date) {
            return !date.isBefore(from) && !date.isAfter(to);
        }
    }
}
