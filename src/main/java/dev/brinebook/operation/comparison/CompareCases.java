// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerHead;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.AnswerValues;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What two versions of the model answer to a case, or one to two cases. */
public final class CompareCases {

    private static final String OWN = "OWN-ASSUMPTION";

    private final List<Operation<?, ?>> calculators;
    private final RequestReader reader;

    /** Reads the request of an operation as every caller's is read. */
    @FunctionalInterface
    public interface RequestReader {

        /**
         * The request in {@code body}.
         *
         * @throws InvalidRequest with every error
         */
        <Q extends Record> Q read(byte[] body, Class<Q> type);
    }

    /** A case that is answered again for each model. */
    @FunctionalInterface
    private interface Case {

        Record answer(Model model);
    }

    private CompareCases(List<Operation<?, ?>> calculators, RequestReader reader) {
        this.calculators = List.copyOf(calculators);
        this.reader = reader;
    }

    /** The operation that compares answers of {@code calculators}. */
    public static Operation<ComparisonRequest, ComparisonAnswer> of(List<Operation<?, ?>> calculators, RequestReader reader) {
        return new Operation<>("compareCases", "/v1/comparison", "Compare two answers number by number",
                "Choose this to see what a new version of the formulas changes for a case, or what differs between two cases: the values "
                        + "that differ, before and after, how many numbers are the same, and the changes of the model that cause each "
                        + "difference. It takes the request of any other operation. To learn whose advice a version changed, send all "
                        + "cases to /v1/bulk/compareCases. For one answer alone choose the operation itself, such as assess.",
                ComparisonRequest.class, ComparisonAnswer.class, new CompareCases(calculators, reader)::answer, List.of(),
                List.of("well-family", "apartment", "two-cases"));
    }

    private ComparisonAnswer answer(ComparisonRequest request, Model model) {
        Explanation explanation = new Explanation();
        boolean one = request.otherCase() == null;
        Operation<?, ?> calculator = calculator(request.calculator());
        Model first = version("/modelVersion", request.modelVersion(), one ? Model.PREVIOUS : model, explanation);
        Model second = one ? version("/otherModelVersion", request.otherModelVersion(), model, explanation) : first;
        Case given = read(calculator, "/thisCase", request.thisCase());
        Case other = one ? given : read(calculator, "/otherCase", request.otherCase());
        Record before = given.answer(first);
        Record after = other.answer(second);
        List<ModelChange> changes = first.differencesTo(second);
        boolean backwards = changes.stream().anyMatch(first::has);
        AnswerComparison compared = AnswerComparison.of(AnswerValues.of(before), AnswerValues.of(after), backwards, changes,
                change -> AnswerValues.of(backwards ? other.answer(second.toggling(change)) : given.answer(first.toggling(change))));
        List<ValueDifference> differences = compared.differences();
        List<AppliedChange> applied = changes.stream().map(change -> applied(change, differences)).toList();
        AnswerHead head = AnswerHead.of(after);
        return new ComparisonAnswer(summary(compared.equalNumbers(), differences), calculator.id(),
                new ComparedAnswer(first.version(), AnswerHead.of(before).summary()), new ComparedAnswer(second.version(), head.summary()),
                compared.equalNumbers(), differences, applied, head.cautions(), explanation.assumptions(), explanation.basis(),
                ModelVersion.CURRENT);
    }

    private Operation<?, ?> calculator(String id) {
        List<String> ids = calculators.stream().map(Operation::id).toList();
        return calculators.stream().filter(operation -> operation.id().equals(id)).findFirst()
                .orElseThrow(() -> unknown("/calculator", id, ids));
    }

    private static Model version(String pointer, String asked, Model byDefault, Explanation explanation) {
        Resolved version = Resolved.ofCode(pointer, asked == null ? byDefault.version() : asked);
        explanation.assume(asked == null ? version.byDefault(OWN) : version);
        return asked == null ? byDefault : Model.of(asked).orElseThrow(() -> unknown(pointer, asked, Model.versions()));
    }

    private static InvalidRequest unknown(String pointer, String given, List<String> known) {
        return new InvalidRequest(List.of(new Violation(pointer, Code.UNKNOWN_VALUE,
                Message.of("problem.http.mustOne", String.join(", ", known)), Violation.names(known),
                WireNames.nearest(given, known).orElse(null), null)));
    }

    private <Q extends Record, A extends Record> Case read(Operation<Q, A> calculator, String pointer, JsonObject request) {
        Q read = under(pointer, () -> reader.read(request.bytes(), calculator.requestType()));
        AnswerParts compared = AnswerParts.standard(calculator.answerType());
        return model -> under(pointer, () -> calculator.answer(read, model, compared));
    }

    /** Points errors of a case to its place in this request. */
    private static <T> T under(String pointer, Supplier<T> part) {
        try {
            return part.get();
        } catch (InvalidRequest invalid) {
            throw new InvalidRequest(invalid.violations().stream().map(fault -> new Violation(pointer + fault.pointer(), fault.code(),
                    fault.message(), fault.allowed(), fault.didYouMean(), fault.received())).toList());
        }
    }

    private static AppliedChange applied(ModelChange change, List<ValueDifference> differences) {
        return new AppliedChange(change.id(), change.version(), Message.of(change),
                (int) differences.stream().filter(difference -> difference.causes().contains(change.id())).count());
    }

    private static Message summary(int equal, List<ValueDifference> differences) {
        Optional<ValueDifference> advice = differences.stream().filter(difference -> difference.pointer().equals("/verdict/step"))
                .findFirst();
        Message counts = Message.of("compareCases.valuesDifferNumbersSame", differences.size(), equal);
        return advice.isEmpty() ? counts : Message.sentences(List.of(Message.of("compareCases.adviceChanges"), counts));
    }
}
