package dev.brinebook.household;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import java.util.Arrays;

/**
 * On which known days somebody was there, and how that changes from day to day.
 *
 * <p>Immutable; a class and not a record because a record would hand out its array.
 */
public final class Presence {

    /** A day with less use than this share of the median of the days with use is taken as one with nobody there. */
    public static final double ASSUMED_EMPTY_SHARE_OF_MEDIAN = 0.05;

    private final int[] occupied;
    private final int emptyDays;
    private final Figure leave;
    private final Figure comeBack;

    private Presence(int[] occupied, int emptyDays, Figure leave, Figure comeBack) {
        this.occupied = occupied;
        this.emptyDays = emptyDays;
        this.leave = leave;
        this.comeBack = comeBack;
    }

    /**
     * Presence told by use, as a chain of two states.
     * <pre>leave = N(there, empty) / N(there, any),   return = N(empty, there) / N(empty, any)</pre>
     * N: how often a day of the first kind is followed by one of the second, both known and next to each other.
     *
     * <p>Source: [ANDERSON-GOODMAN] these shares make the days most likely.
     */
    public static Presence of(MeteredDays days) {
        double[] drawn = Arrays.stream(days.known()).mapToDouble(days::litres).filter(litres -> litres > 0).toArray();
        double threshold = drawn.length == 0 ? Double.MAX_VALUE : ASSUMED_EMPTY_SHARE_OF_MEDIAN * Trend.median(drawn);
        int[] occupied = Arrays.stream(days.known()).filter(i -> days.litres(i) >= threshold).toArray();
        int[][] followed = new int[2][2];
        for (int i = 1; i < days.size(); i++) {
            if (days.isKnown(i - 1) && days.isKnown(i)) {
                followed[days.litres(i - 1) >= threshold ? 1 : 0][days.litres(i) >= threshold ? 1 : 0]++;
            }
        }
        return new Presence(occupied, days.known().length - occupied.length, share(followed[1][0], followed[1][1]),
                share(followed[0][1], followed[0][0]));
    }

    private static Figure share(int changed, int stayed) {
        return changed + stayed == 0 ? Figure.none(NoAnswer.NO_SUCH_DAY_FOLLOWED)
                : Figure.of((double) changed / (changed + stayed));
    }

    /** Indexes of the days with somebody there, in order. */
    public int[] occupied() {
        return occupied.clone();
    }

    public int occupiedDays() {
        return occupied.length;
    }

    public int emptyDays() {
        return emptyDays;
    }

    /** Share of the known days with nobody there. */
    public double emptyShare() {
        return (double) emptyDays / (emptyDays + occupied.length);
    }

    /** Probability that the day after one with somebody there is empty. */
    public Figure leave() {
        return leave;
    }

    /** Probability that somebody is there on the day after an empty one. */
    public Figure comeBack() {
        return comeBack;
    }
}
