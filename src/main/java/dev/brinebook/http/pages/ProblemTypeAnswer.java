// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;

@SchemaDescription("A type of problem: its meaning, and how to correct it.")
record ProblemTypeAnswer(
        @Property(value = "The type, as problem documents name it.", example = "\"/problems/not-found\"") String type,
        @Property(value = "The kind of problem in words.", example = "\"Nothing is at this path\"") Message title,
        @Property(value = "The HTTP status of its answers.", min = 400, max = 599, example = "404") Integer status,
        @Property(value = "What it means.", example = "\"No operation and no page has this path.\"") Message explanation,
        @Property(value = "How to correct it.", example = "\"Check the path against the contract.\"") Message remedy) {

    static ProblemTypeAnswer of(ProblemType type, String publicUrl) {
        return new ProblemTypeAnswer(publicUrl + type.path(), type.title(), type.status(), type.explanation(), type.remedy());
    }
}
