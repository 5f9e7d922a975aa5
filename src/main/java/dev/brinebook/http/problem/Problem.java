// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.problem;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violations;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A problem document (RFC 9457).")
public record Problem(
        @Property(value = "Address of the page about this kind of problem, as HTML or JSON. Absolute where the service knows its public "
                + "address, else relative to the address of the request.", example = "\"/problems/invalid-request\"") String type,
        @Property(value = "The kind of problem in words.", example = "\"The request has errors\"") Message title,
        @Property(value = "The HTTP status.", min = 400, max = 599, example = "422") Integer status,
        @Property(value = "Description of this problem.", example = "\"The request has 1 error.\"") Message detail,
        @Property(value = "This occurrence: the path of the request, and behind # the request ID.", optional = "when it could not be read",
                example = "\"/v1/assessment#b1946ac92492d234\"") String instance,
        @Property(value = "Request ID, to find the request in the log.", example = "\"b1946ac92492d234\"")
        String requestId,
        @Property(value = "All errors found, sorted by pointer, " + Problem.MAX_ERRORS + " at most.",
                optional = "when no property has an error", maxItems = Problem.MAX_ERRORS)
        List<Fault> errors,
        @Property(value = "Number of errors found but not listed. The search stops after error number "
                + Violations.MAX_FAULTS + ", so there may be more.", optional = "when all are listed", min = 1,
                example = "3") Integer errorsOmitted) {

    /** Faults listed at most. */
    public static final int MAX_ERRORS = 25;
    /** More names than any list of choices or of properties has. */
    static final int MAX_ALLOWED = 60;

    @SchemaDescription("One error in a request.")
    public record Fault(
            @Property(value = "JSON pointer to the value with the error.", example = "\"/water/hardness/value\"") String pointer,
            @Property(value = "Query parameter with the error.", optional = "unless the request used a GET form",
                    example = "\"value\"") String parameter,
            @Property(value = "Column with the error, as the table names it.", optional = "unless the request was a row of a table",
                    example = "\"water.hardness.value\"") String column,
            @Property(value = "Header with the error.", optional = "unless it is in a header", example = "\"Model-Version\"") String header,
            @Property("Stable code of the kind of error.") Violation.Code code,
            @Property(value = "The error, and what is allowed.",
                    example = "\"Must be from 0 to 584.178 gpg. Given: -4 gpg.\"") Message message,
            @Property(value = "What is allowed: each name, or the range in the unit of the request as one text.",
                    optional = "when the allowed values are not a range or a list", maxItems = Problem.MAX_ALLOWED,
                    example = "[\"from 0 to 584.178 gpg\"]") List<Message> allowed,
            @Property(value = "Most similar known name.", optional = "when no name is similar", example = "\"hardness\"")
            String didYouMean,
            @Property(value = "Value received.", optional = "when it is long or may be harmful", example = "\"-4\"")
            String received) {

        public static Fault of(Violation violation, String parameter, String column) {
            return new Fault(violation.pointer(), parameter, column, null, violation.code(), violation.message(), violation.allowed(),
                    violation.didYouMean(), violation.received());
        }

        /** An error in a header; its pointer is that of the whole request. */
        public static Fault ofHeader(String header, Violation violation) {
            return new Fault("", null, null, header, violation.code(), violation.message(), violation.allowed(),
                    violation.didYouMean(), violation.received());
        }
    }
}
