// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.Operation;
import dev.brinebook.docs.PartTables.Row;
import dev.brinebook.source.Sources;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the docs can be searched for: where each thing is described, with what it is. */
final class SearchIndex {

    /**
     * Something to find.
     *
     * @param title its name
     * @param address where it is described
     * @param text what it is, in a sentence or two
     */
    record Entry(String title, String address, String text) {
    }

    /** Entries of one kind, such as operations. */
    record Group(String kind, List<Entry> entries) {
    }

    /** The content of the page without scripts: everything but the properties, which their records list. */
    record Page(List<Group> groups) {
    }

    private static final List<Entry> PAGES = List.of(
            new Entry("Where to start", "/docs", "First calls for a shop, a customer system and a chat agent, and rules for all."),
            new Entry("Console", "/docs/try", "Send requests from the browser."),
            new Entry("Conventions", "/docs/conventions",
                    "Retries, request ids, caching, versions, limits, parts of answers, lists, traces."),
            new Entry("Changelog", "/docs/changelog", "What changed in the contract and in the numbers."),
            new Entry("Sources", "/docs/sources", "Every source, and the results based on each."),
            new Entry("Problems", "/problems", "Every kind of error, and how to correct it."));

    private final List<Group> groups = new ArrayList<>();
    private final Group properties;

    SearchIndex(List<Operation<?, ?>> operations, List<ProblemKind> problems, PartIndex parts) {
        groups.add(new Group("page", PAGES));
        groups.add(new Group("operation", operations.stream().map(operation -> new Entry(operation.id(),
                "/docs/operations/" + operation.id(), operation.summary())).toList()));
        groups.add(new Group("problem", problems.stream().map(kind -> new Entry(kind.title(), "/problems/" + kind.slug(),
                kind.explanation())).toList()));
        groups.add(new Group("error code", ProblemPage.allCodes().stream().map(code -> new Entry(code.code(),
                "/problems/invalid-request#" + code.code(), code.meaning())).toList()));
        groups.add(new Group("caution", cautions(operations)));
        groups.add(new Group("record", parts.all().stream().map(part -> new Entry(part.name(), "/docs/parts/" + part.name(),
                part.about())).toList()));
        groups.add(new Group("source", Sources.all().values().stream().map(source -> new Entry(source.key(),
                "/docs/sources#" + source.key(), source.citation())).toList()));
        // What one can send comes before what one gets.
        properties = new Group("property", parts.names().stream().map(parts::page).flatMap(Optional::stream)
                .sorted(Comparator.comparing(page -> page.requests().isEmpty()))
                .flatMap(page -> page.part().rows().stream().map(row -> entry(page.part().name(), row))).toList());
    }

    private static List<Entry> cautions(List<Operation<?, ?>> operations) {
        return operations.stream().flatMap(operation -> Warnings.cautions(AnsweredExamples.of(operation)).stream()
                .map(caution -> new Entry(caution.code(), "/docs/operations/" + operation.id() + "#cautions", caution.message())))
                .collect(Collectors.toMap(Entry::title, entry -> entry, (first, again) -> first, LinkedHashMap::new))
                .values().stream().toList();
    }

    private static Entry entry(String record, Row row) {
        return new Entry(row.name(), "/docs/parts/" + record + "#" + row.name(), "of " + record + ". " + row.what());
    }

    Page page() {
        return new Page(groups);
    }

    /** The index for the script of the search page: kinds, each with its entries. */
    byte[] json() {
        List<Group> all = new ArrayList<>(groups);
        all.add(properties);
        try {
            return new ObjectMapper().writeValueAsBytes(Map.of("groups", all));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the index cannot be written", e);
        }
    }
}
