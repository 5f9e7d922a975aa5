package dev.brinebook.assessment;

import java.util.List;

/**
 * What to do, in order, when a metered controller is put into service.
 *
 * <p>Source: [CP-INSTALLATION].
 */
public final class Commissioning {

    private static final List<String> STEPS = List.of(
            "Test the raw water again for hardness and iron, and write both down.",
            "Read the water meter and note the date, so that the first year can be checked.",
            "Put the softener in bypass, disconnect the power and relieve the pressure before opening the valve.",
            "Fit the valve and meter, the drain line with its air gap, and the brine line; check every flow control.",
            "Open the bypass slowly, drive the air out, and look for leaks under pressure.",
            "Connect the power through surge protection and set the clock.",
            "Set the hardness, capacity, reserve, day override, hour and minutes that this answer gives.",
            "Put the water of one refill into the brine tank, then salt to well above the water.",
            "Start a regeneration by hand: measure the drain flow in a bucket, watch that brine is drawn and that the"
                    + " refill stops at its minutes.",
            "Test the softened water after the regeneration: it should be below 1 gpg.",
            "Run a tap and see that the meter counts.",
            "Write the settings on the softener and show the owner the salt, the bypass and the unsoftened tap.");

    private Commissioning() {
    }

    /** The steps, each one sentence. */
    public static List<String> steps() {
        return STEPS;
    }
}
