package dev.brinebook.household;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Days on which far more is used than is usual of a household: a leak, a filling, a tap left open.
 *
 * <p>Immutable; a class and not a record because a record would hand out its array.
 */
public final class ExceptionalDays {

    /**
     * A day that uses more than so many median days with somebody at home is exceptional.
     * Source: [DAIAD] such days come to 1.1 a year, in 31 % of the homes.
     */
    public static final double LEAST_OF_MEDIAN = 4;

    private final MeteredDays days;
    private final double limitLitres;

    private ExceptionalDays(MeteredDays days) {
        this.days = days;
        double[] occupied = Arrays.stream(Presence.of(days).occupied()).mapToDouble(days::litres).toArray();
        limitLitres = occupied.length == 0 ? Double.POSITIVE_INFINITY : LEAST_OF_MEDIAN * Trend.median(occupied);
    }

    /** Those among {@code days}. */
    public static ExceptionalDays of(MeteredDays days) {
        return new ExceptionalDays(days);
    }

    /** Their indexes, in order. */
    public int[] indexes() {
        return Arrays.stream(days.known()).filter(i -> days.litres(i) > limitLitres).toArray();
    }

    /** All days, with these held to the most that is not exceptional. */
    public MeteredDays held() {
        List<OptionalDouble> held = IntStream.range(0, days.size()).mapToObj(i -> days.isKnown(i)
                ? OptionalDouble.of(Math.min(limitLitres, days.litres(i))) : OptionalDouble.empty())
                .toList();
        return MeteredDays.of(days.firstDate(), held);
    }
}
