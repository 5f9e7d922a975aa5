package dev.brinebook.assessment;

import dev.brinebook.wording.Worded;

/**
 * What to do, in order, when a metered controller is put into service; each is one sentence.
 *
 * <p>Source: [CP-INSTALLATION].
 */
public enum CommissioningStep implements Worded {
    TEST_WATER("Test the raw water again for hardness and iron, and write both down."),
    READ_METER("Read the water meter and note the date, so that the first year can be checked."),
    SHUT_OFF("Put the softener in bypass, disconnect the power and relieve the pressure before opening the valve."),
    FIT("Fit the valve and meter, the drain line with its air gap, and the brine line; check every flow control."),
    OPEN_BYPASS("Open the bypass slowly, drive the air out, and look for leaks under pressure."),
    CONNECT("Connect the power through surge protection and set the clock."),
    SET("Set the hardness, capacity, reserve, day override, hour and minutes that this answer gives."),
    FILL_BRINE_TANK("Put the water of one refill into the brine tank, then salt to well above the water."),
    REGENERATE("Start a regeneration by hand: measure the drain flow in a bucket, watch that brine is drawn and that the"
            + " refill stops at its minutes."),
    TEST_SOFTENED_WATER("Test the softened water after the regeneration: it should be below 1 gpg.",
            "Test the softened water after the regeneration: it should be below 17 mg/L."),
    RUN_TAP("Run a tap and see that the meter counts."),
    HAND_OVER("Write the settings on the softener and show the owner the salt, the bypass and the unsoftened tap.");

    private final String words;
    private final String metricWords;

    CommissioningStep(String words, String metricWords) {
        this.words = words;
        this.metricWords = metricWords;
    }

    CommissioningStep(String words) {
        this(words, words);
    }

    @Override
    public String words() {
        return words;
    }

    @Override
    public String metricWords() {
        return metricWords;
    }
}
