package dev.brinebook.operation.household;

import dev.brinebook.api.Text;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Why the methods give different flows for the same fixtures, in sentences. */
final class PeakDifferences {

    /** What the arithmetic alone may leave between two flows that are the same. */
    private static final double ASSUMED_SAME_SHARE = 1e-6;

    private PeakDifferences() {
    }

    static List<Message> of(PeakFlowEstimate estimate) {
        Figure exact = estimate.exactLitresPerMinute();
        Figure statistical = exact.exists() ? exact : estimate.fittedLitresPerMinute();
        return Stream.of(Optional.of(code(times(estimate.codeLitresPerMinute(), statistical))), Optional.of(statistics()),
                fit(exact, estimate.fittedLitresPerMinute()),
                Optional.of(design(times(estimate.designLitresPerMinute(), statistical)))).flatMap(Optional::stream).toList();
    }

    private static Message code(Optional<BigDecimal> times) {
        return times.map(number -> Message.of("The code counts fixture units, set for the fixtures and the crowded hours of public"
                + " buildings long ago, for pipes that must not fail: here {0} times the statistical flow; in houses it is"
                + " commonly two to three times what is drawn.", number)).orElseGet(() ->
                Message.of("The code counts fixture units, set for the fixtures and the crowded hours of public buildings long"
                        + " ago, for pipes that must not fail; in houses it is commonly two to three times what is drawn."));
    }

    private static Message statistics() {
        return Message.of("The statistics take how often each fixture ran in the busy hour of measured homes, with the flows of"
                + " today's fixtures, and hold for the moments in which any water is drawn.");
    }

    private static Optional<Message> fit(Figure exact, Figure fitted) {
        if (!fitted.exists()) {
            return Optional.empty();
        }
        if (!exact.exists()) {
            return Optional.of(Message.of("With so many fixtures only the fit is worked out; it comes near the exact flow, mostly"
                    + " from below."));
        }
        double share = fitted.value() / exact.value() - 1;
        Message distance = Math.abs(share) < ASSUMED_SAME_SHARE ? Message.of("The fit agrees with the exact flow here.")
                : share < 0 ? Message.of("The fit is {0} % below the exact flow.", Text.number(-100 * share))
                        : Message.of("The fit is {0} % above the exact flow.", Text.number(100 * share));
        return Optional.of(Message.joined(" ", List.of(distance, Message.of("It draws a smooth curve through what can only be the"
                + " sum of the flows of a few fixtures, and knows neither its steps nor its long tail."))));
    }

    private static Message design(Optional<BigDecimal> times) {
        return times.map(number -> Message.of("The German standard lessens the sum of the design flows, which are what each tap"
                + " needs to work well, by a curve for the kind of building: here {0} times the statistical flow; a small house"
                + " comes near its two or three largest fixtures at once.", number)).orElseGet(() ->
                Message.of("The German standard lessens the sum of the design flows, which are what each tap needs to work well,"
                        + " by a curve for the kind of building; a small house comes near its two or three largest fixtures at"
                        + " once."));
    }

    private static Optional<BigDecimal> times(Figure flow, Figure statistical) {
        return flow.exists() && statistical.exists() ? Optional.of(Text.number(flow.value() / statistical.value()))
                : Optional.empty();
    }
}
