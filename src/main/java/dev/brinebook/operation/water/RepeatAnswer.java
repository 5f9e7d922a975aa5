// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.RepeatInterval;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("How often a test is repeated. Test sooner after a flood, a repair or a change of taste, and before a baby drinks it.")
public record RepeatAnswer(
        @Property("The parameter.") Parameter parameter,
        @Property(value = "Interval between tests.", min = 1, unit = "years", example = "1") Integer years,
        @Property(value = "Date from which the next test is due.", optional = "without the date of a valid sample",
                example = "\"2027-03-01\"") LocalDate dueOn,
        @Property(value = "The source.", example = "\"Guidelines for Testing Well Water (2024)\"")
        Message source) {

    static RepeatAnswer of(RepeatInterval interval, List<PrintedResult> lines) {
        return new RepeatAnswer(interval.parameter(), interval.years(), interval.dueOn(lines).orElse(null),
                Sources.get(interval.sourceKey()).inWords());
    }
}
