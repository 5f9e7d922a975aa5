package dev.brinebook.guard;

/** Ends a calculation that whoever asked for it no longer waits for; see {@link StopSign}. */
public final class CalculationStopped extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CalculationStopped() {
        super("stopped by whoever asked for it", null, false, false);
    }
}
