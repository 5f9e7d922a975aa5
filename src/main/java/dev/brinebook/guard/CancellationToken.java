// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Lets whoever asks for a calculation end it while it runs. What may take long looks at the sign once in each round of its
 * loop; between two looks lie no more than milliseconds.
 *
 * <p>No number depends on the sign: a calculation ends as it would without one, or it ends with {@link CalculationCancelled}.
 */
public final class CancellationToken {

    private static final BooleanSupplier NEVER = () -> false;
    private static final ThreadLocal<BooleanSupplier> OF_THIS_THREAD = new ThreadLocal<>();

    private CancellationToken() {
    }

    /**
     * What {@code calculation} gives.
     *
     * @param stop asked again and again, by any thread that takes part; once true it must stay so
     * @throws CalculationCancelled when {@code stop} became true before it was done
     */
    public static <T> T obeying(BooleanSupplier stop, Supplier<T> calculation) {
        BooleanSupplier before = OF_THIS_THREAD.get();
        OF_THIS_THREAD.set(stop);
        try {
            return calculation.get();
        } finally {
            if (before == null) {
                OF_THIS_THREAD.remove();
            } else {
                OF_THIS_THREAD.set(before);
            }
        }
    }

    /** The sign that this thread obeys, to be handed to others that take a share of the work. */
    public static BooleanSupplier current() {
        BooleanSupplier stop = OF_THIS_THREAD.get();
        return stop == null ? NEVER : stop;
    }

    /**
     * Goes on, or not.
     *
     * @throws CalculationCancelled when this thread is to stop
     */
    public static void obey() {
        if (current().getAsBoolean()) {
            throw new CalculationCancelled();
        }
    }
}
