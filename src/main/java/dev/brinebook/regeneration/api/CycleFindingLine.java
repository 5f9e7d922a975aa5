package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.regeneration.CycleFinding;

@About("Something wrong with the cycle on this hardware.")
public record CycleFindingLine(
        @Property(value = "Stable code.", example = "\"backwashTooWeak\"") CycleFinding code,
        @Property(value = "What is wrong, in a sentence.", example = "\"The backwash lifts the bed too little.\"")
        String message) {

    static CycleFindingLine of(CycleFinding finding) {
        return new CycleFindingLine(finding, finding.sentence());
    }
}
