package dev.brinebook.household.api;

import dev.brinebook.api.Text;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.PeakFlowEstimate;
import java.util.ArrayList;
import java.util.List;

/** Why the methods give different flows for the same fixtures, in sentences. */
final class PeakDifferences {

    /** What the arithmetic alone may leave between two flows that are the same. */
    private static final double ASSUMED_SAME_SHARE = 1e-6;

    private PeakDifferences() {
    }

    static List<String> of(PeakFlowEstimate estimate) {
        Figure exact = estimate.exactLitresPerMinute();
        Figure statistical = exact.exists() ? exact : estimate.fittedLitresPerMinute();
        List<String> sentences = new ArrayList<>();
        sentences.add("The code counts fixture units, set for the fixtures and the crowded hours of public buildings long ago,"
                + " for pipes that must not fail" + times(estimate.codeLitresPerMinute(), statistical) + "; in houses it is"
                + " commonly two to three times what is drawn.");
        sentences.add("The statistics take how often each fixture ran in the busy hour of measured homes, with the flows of"
                + " today's fixtures, and hold for the moments in which any water is drawn.");
        if (exact.exists()) {
            double share = estimate.fittedLitresPerMinute().value() / exact.value() - 1;
            String distance = Math.abs(share) < ASSUMED_SAME_SHARE ? "agrees with the exact flow here, though"
                    : "is " + Text.number(Math.abs(100 * share)) + " % " + (share < 0 ? "below" : "above") + " the exact flow:";
            sentences.add("The fit " + distance + " it draws a smooth curve through what can only be the sum of the flows of"
                    + " a few fixtures, and knows neither its steps nor its long tail.");
        } else if (statistical.exists()) {
            sentences.add("With so many fixtures only the fit is worked out; it comes near the exact flow, mostly from below.");
        }
        sentences.add("The German standard lessens the sum of the design flows, which are what each tap needs to work well,"
                + " by a curve for the kind of building" + times(estimate.designLitresPerMinute(), statistical)
                + "; a small house comes near its two or three largest fixtures at once.");
        return List.copyOf(sentences);
    }

    private static String times(Figure flow, Figure statistical) {
        return flow.exists() && statistical.exists() ? ": here " + Text.number(flow.value() / statistical.value())
                + " times the statistical flow" : "";
    }
}
