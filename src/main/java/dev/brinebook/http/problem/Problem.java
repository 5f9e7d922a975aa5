package dev.brinebook.http.problem;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violations;
import dev.brinebook.wording.Message;
import java.util.List;

@About("An answer that reports a problem, as RFC 9457 shapes it.")
public record Problem(
        @Property(value = "Path of the page that explains this kind of problem.",
                example = "\"/problems/invalid-request\"") String type,
        @Property(value = "The kind of problem in words.", example = "\"The request has faults\"") Message title,
        @Property(value = "The HTTP status.", min = 400, max = 599, example = "422") Integer status,
        @Property(value = "What went wrong this time.", example = "\"1 fault in the request.\"") Message detail,
        @Property(value = "Path of the request.", optional = "when it could not be read",
                example = "\"/v1/assessment\"") String instance,
        @Property(value = "Id of the request, to find it in the log.", example = "\"b1946ac92492d234\"")
        String requestId,
        @Property(value = "Every fault found, sorted by pointer, " + Problem.MAX_ERRORS + " at most.",
                optional = "when no property is at fault")
        List<Fault> errors,
        @Property(value = "How many more faults were found than are listed. No more are looked for after the "
                + Violations.MAX_FAULTS + "th, so that there may be others.", optional = "when all are listed", min = 1,
                example = "3") Integer errorsOmitted) {

    /** Faults listed at most. */
    public static final int MAX_ERRORS = 25;

    @About("One fault of a request.")
    public record Fault(
            @Property(value = "JSON pointer to the faulty value.", example = "\"/water/hardness/value\"") String pointer,
            @Property(value = "The query parameter at fault.", optional = "unless the request was a GET form",
                    example = "\"value\"") String parameter,
            @Property("Stable code of the kind of fault.") Violation.Code code,
            @Property(value = "What is wrong and what would be right.",
                    example = "\"must be from 0 to 584.178 gpg, was -4 gpg\"") Message message,
            @Property(value = "What is allowed, in the caller's unit.", optional = "when it is no range or list",
                    example = "\"from 0 to 584.178 gpg\"") Message allowed,
            @Property(value = "The nearest known name.", optional = "when none is near", example = "\"hardness\"")
            String didYouMean,
            @Property(value = "What came.", optional = "when it is long or may be harmful", example = "\"-4\"")
            String received) {

        public static Fault of(Violation violation, String parameter) {
            return new Fault(violation.pointer(), parameter, violation.code(), violation.message(), violation.allowed(),
                    violation.didYouMean(), violation.received());
        }
    }
}
