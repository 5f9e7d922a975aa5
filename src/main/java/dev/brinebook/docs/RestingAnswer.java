package dev.brinebook.docs;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import java.util.List;

@About("What of one operation rests on a source.")
public record RestingAnswer(
        @Property(value = "Id of the operation.", example = "\"compensateHardness\"") String operation,
        @Property(value = "JSON pointers to the results; a * stands for every element of a list.",
                example = "[\"/hardness/iron\"]") List<String> results,
        @Property(value = "Codes of the cautions.", example = "[\"ironStains\"]") List<String> cautions) {
}
