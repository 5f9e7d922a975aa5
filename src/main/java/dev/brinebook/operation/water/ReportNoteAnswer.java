// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.ReportNote;
import java.util.List;

@SchemaDescription("What the sampling, or another report, says of results.")
public record ReportNoteAnswer(
        @Property("Stable code of the note.") ReportNote code,
        @Property("What it is about.") List<Parameter> about,
        @Property(value = "The note, in a sentence.", example = "\"The sample was tested too late.\"") Message message) {

    static List<ReportNoteAnswer> of(List<PrintedResult> lines) {
        return ReportNote.of(lines).entrySet().stream().map(note -> new ReportNoteAnswer(note.getKey(), List.copyOf(note.getValue()),
                Message.of(note.getKey()))).toList();
    }
}
