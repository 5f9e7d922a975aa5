// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import dev.brinebook.guard.CalculationCancelled;
import dev.brinebook.guard.CancellationToken;
import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** The time that one request may take once it runs: reading, checking, calculating and writing together. */
public final class Deadline implements BooleanSupplier {

    /** What a request is at, as the metrics name it. */
    public enum Part {
        READING,
        CHECKING,
        CALCULATING,
        WRITING
    }

    private final int milliseconds;
    private final RequestMetrics metrics;
    private final long endNanos;
    private volatile Part part = Part.READING;

    /** A deadline that many {@code milliseconds} from now. */
    Deadline(int milliseconds, RequestMetrics metrics) {
        this.milliseconds = milliseconds;
        this.metrics = metrics;
        this.endNanos = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
    }

    @Override
    public boolean getAsBoolean() {
        return System.nanoTime() - endNanos > 0;
    }

    /**
     * What {@code work} returns.
     *
     * @throws ProblemException when it is not done in time
     */
    public <T> T run(Supplier<T> work) {
        try (RoomForTables room = new RoomForTables()) {
            return CancellationToken.obeying(this, () -> WorkingMemory.during(room::take, work));
        } catch (CalculationCancelled late) {
            metrics.reject(Rejection.TIME);
            metrics.countLate(part);
            throw new ProblemException(ProblemType.CALCULATION_TOO_LONG, Message.of(
                    "deadline.calculationTookLongerThan", milliseconds));
        }
    }

    /**
     * Records the phase of the request of this thread.
     *
     * @throws CalculationCancelled when its time is over
     */
    public static void enter(Part part) {
        if (CancellationToken.current() instanceof Deadline deadline) {
            deadline.part = part;
        }
        CancellationToken.obey();
    }

    /** An error, such as of a table that does not load, is an internal error like any exception, and answered as one. */
    public static byte[] calculate(Supplier<byte[]> answer) {
        try {
            return answer.get();
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
        }
    }
}
