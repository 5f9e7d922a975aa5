// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Text;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Why the methods give different flows for the same fixtures, in sentences. */
final class PeakDifferences {

    /** Of the code, the statistics, the fit and the design standard, one each. */
    static final int MOST = 4;

    /** What the arithmetic alone may leave between two flows that are the same. */
    private static final double ASSUMED_SAME_SHARE = 1e-6;

    private PeakDifferences() {
    }

    static List<Message> of(PeakFlowEstimate estimate) {
        OptionalResult exact = estimate.exactLitresPerMinute();
        OptionalResult statistical = exact.exists() ? exact : estimate.fittedLitresPerMinute();
        return Stream.of(Optional.of(code(times(estimate.codeLitresPerMinute(), statistical))), Optional.of(statistics()),
                fit(exact, estimate.fittedLitresPerMinute()),
                Optional.of(design(times(estimate.designLitresPerMinute(), statistical)))).flatMap(Optional::stream).toList();
    }

    private static Message code(Optional<BigDecimal> times) {
        return times.map(number -> Message.of("peakDifferences.codeUsesFixtureUnits", number)).orElseGet(() ->
                Message.of("peakDifferences.codeUsesFixtureUnitsThey"));
    }

    private static Message statistics() {
        return Message.of("peakDifferences.statisticsUseHowOften");
    }

    private static Optional<Message> fit(OptionalResult exact, OptionalResult fitted) {
        if (!fitted.exists()) {
            return Optional.empty();
        }
        if (!exact.exists()) {
            return Optional.of(Message.of("peakDifferences.numberFixturesOnlyFit"));
        }
        double share = fitted.value() / exact.value() - 1;
        Message distance = Math.abs(share) < ASSUMED_SAME_SHARE ? Message.of("peakDifferences.fitAgreesExactFlow")
                : share < 0 ? Message.of("peakDifferences.fitBelowExactFlow", Text.whole(-100 * share))
                        : Message.of("peakDifferences.fitAboveExactFlow", Text.whole(100 * share));
        return Optional.of(Message.sentences(List.of(distance, Message.of("peakDifferences.fitSmoothCurveReal"))));
    }

    private static Message design(Optional<BigDecimal> times) {
        return times.map(number -> Message.of("peakDifferences.germanStandardReducesSum", number)).orElseGet(() ->
                Message.of("peakDifferences.germanStandardReducesSumDesign"));
    }

    private static Optional<BigDecimal> times(OptionalResult flow, OptionalResult statistical) {
        return flow.exists() && statistical.exists() ? Optional.of(Text.tenths(flow.value() / statistical.value()))
                : Optional.empty();
    }
}
