// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import java.util.List;

/** The texts for language models that introduce the service. */
public final class Guide {

    /** Sent to every agent that connects. A host may drop it, so each rule also stands in the description of a tool or in an answer. */
    static final String INSTRUCTIONS = Json.file("instructions.txt");

    private Guide() {
    }

    /** The page at {@code /llms.txt}, in the form that llmstxt.org proposes. */
    public static String llmsText(List<Operation<?, ?>> operations) {
        StringBuilder lines = new StringBuilder();
        for (Operation<?, ?> operation : operations) {
            lines.append("- [%1$s](/docs/operations/%1$s): POST `%2$s`. %3$s. [In the contract](/openapi.json#/paths/%4$s/post)"
                    .formatted(operation.id(), operation.path(), operation.summary(), operation.path().replace("/", "~1")))
                    .append('\n');
        }
        return Json.file("llms.txt").replace("{operations}\n", lines);
    }
}
