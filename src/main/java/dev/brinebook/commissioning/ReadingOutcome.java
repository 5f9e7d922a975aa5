// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.text.Localizable;

/** What a reading comes to, and why. */
public enum ReadingOutcome implements Localizable {
    /** Inside the band. */
    WITHIN(Verdict.PASS),
    /** A yes where yes is right. */
    CONFIRMED(Verdict.PASS),
    /** Between the band and the limit beyond which sound equipment hardly ever reads. */
    BETWEEN_LIMITS(Verdict.MEASURE_AGAIN),
    /** The reading may be off by more than the band allows for the equipment, so it decides nothing. */
    TOO_UNCERTAIN(Verdict.MEASURE_AGAIN),
    /** Outside a band that rests on a flow nobody gave. */
    FLOW_NOT_KNOWN(Verdict.MEASURE_AGAIN),
    BELOW(Verdict.FAIL),
    ABOVE(Verdict.FAIL),
    /** A no where yes is right. */
    DENIED(Verdict.FAIL);

    /** The verdict on a reading. */
    public enum Verdict implements Localizable {
        PASS, MEASURE_AGAIN, FAIL;

        @Override
        public String textId() {
            return Localizable.idOf("readingVerdict", this);
        }
    }

    private final Verdict verdict;

    ReadingOutcome(Verdict verdict) {
        this.verdict = verdict;
    }

    public Verdict verdict() {
        return verdict;
    }

    @Override
    public String textId() {
        return Localizable.idOf("readingOutcome", this);
    }
}
