package dev.brinebook.api;

import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import dev.brinebook.wording.Message;

@About("Why a number is what it is.")
public record BasisAnswer(
        @Property(value = "JSON pointer to the result, or to the part of the answer, that it explains; a * in it"
                + " stands for every element of a list.",
                example = "\"/total\"") String pointer,
        @Property(value = "The formula, in words.", example = "\"hardness plus 4 gpg for each mg/L of iron\"")
        Message formula,
        @Property(value = "The publication or practice it comes from.", example = "\"40 CFR 143.3 (2023)\"")
        String source,
        @Property("How far the source can be trusted.") Source.Kind kind) {

    static BasisAnswer of(String pointer, Message formula, String sourceKey) {
        return new BasisAnswer(pointer, formula, cite(sourceKey), Sources.get(sourceKey).kind());
    }

    static String cite(String sourceKey) {
        return Sources.get(sourceKey).cited();
    }
}
