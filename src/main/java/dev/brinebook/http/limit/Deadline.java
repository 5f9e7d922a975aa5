package dev.brinebook.http.limit;

import dev.brinebook.guard.CalculationStopped;
import dev.brinebook.guard.StopSign;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.wording.Message;
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
    public static void enter(Part part) {
        if (StopSign.current() instanceof Deadline deadline) {
            deadline.part = part;
        }
        StopSign.obey();
    }

    /** An error, such as of a table that does not load, is a fault of ours like any exception, and answered as one. */
    public static byte[] calculate(Supplier<byte[]> answer) {
        try {
            return answer.get();
        } catch (Error e) {
            throw new IllegalStateException("the calculation failed", e);
        }
    }
}
