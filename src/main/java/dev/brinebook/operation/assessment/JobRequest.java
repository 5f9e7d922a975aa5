// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.time.LocalDate;

@SchemaDescription("Texts for the printed sheets. They do not affect the calculation and are not kept.")
public record JobRequest(
        @Property(value = "Name of the customer or the case.", maxItems = JobRequest.LONGEST_NAME, fallback = JobRequest.BLANK,
                example = "\"Invented family\"") String name,
        @Property(value = "Address.", maxItems = JobRequest.LONGEST_ADDRESS, fallback = JobRequest.BLANK, example = "\"1 Example Road\"")
        String address,
        @Property(value = "Date of the water test.", fallback = JobRequest.BLANK, example = "\"2026-03-01\"") LocalDate testedOn,
        @Property(value = "Date of the visit.", fallback = JobRequest.BLANK, example = "\"2026-03-02\"") LocalDate seenOn,
        @Property(value = "Author.", maxItems = JobRequest.LONGEST_NAME, fallback = JobRequest.BLANK, example = "\"A. Author\"")
        String writtenBy,
        @Property(value = "Phone of the author.", maxItems = JobRequest.LONGEST_PHONE, fallback = JobRequest.BLANK,
                example = "\"555-0100\"") String phone) {

    static final JobRequest NONE = new JobRequest(null, null, null, null, null, null);

    static final int LONGEST_NAME = 48;
    static final int LONGEST_ADDRESS = 96;
    static final int LONGEST_PHONE = 24;
    static final String BLANK = "a blank";
}
