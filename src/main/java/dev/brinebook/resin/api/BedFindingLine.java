package dev.brinebook.resin.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.softener.BedFinding;

@About("Something wrong with the bed for what it is asked to do.")
public record BedFindingLine(
        @Property(value = "Stable code.", example = "\"bedTooShallow\"") BedFinding code,
        @Property(value = "What is wrong, in a sentence.", example = "\"The backwash lifts the bed too little.\"")
        String message) {

    static BedFindingLine of(BedFinding finding) {
        return new BedFindingLine(finding, finding.sentence());
    }
}
