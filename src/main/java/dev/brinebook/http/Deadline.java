package dev.brinebook.http;

import dev.brinebook.guard.CalculationStopped;
import dev.brinebook.guard.StopSign;
import dev.brinebook.wording.Message;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** The time that one request may take once it runs: reading, checking, calculating and writing together. */
final class Deadline implements BooleanSupplier {

    /** What a request is at, as the metrics name it. */
    enum Part {
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
    <T> T run(Supplier<T> work) {
        try {
            return StopSign.obeying(this, work);
        } catch (CalculationStopped late) {
            metrics.reject(Rejection.TIME);
            metrics.countLate(part);
            throw new ProblemException(ProblemType.CALCULATION_TOO_LONG, Message.of(
                    "The calculation was not done after {0} milliseconds, and was ended.", milliseconds));
        }
    }

    /**
     * Says what the request of this thread is at.
     *
     * @throws CalculationStopped when its time is over
     */
    static void enter(Part part) {
        if (StopSign.current() instanceof Deadline deadline) {
            deadline.part = part;
        }
        StopSign.obey();
    }
}
