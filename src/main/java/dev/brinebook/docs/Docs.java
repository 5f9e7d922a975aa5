// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.docs.Templates.Crumb;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** The pages for people who call the service, each made once, when it is first asked for. */
public final class Docs {

    private static final Crumb START = new Crumb("/docs", "Docs");
    private static final Crumb PROBLEMS = new Crumb("/problems", "Problems");

    private final List<Operation<?, ?>> operations;
    private final List<ProblemKind> problems;
    private final Map<String, byte[]> made = new ConcurrentHashMap<>();
    private PartIndex parts;
    private SourcesAnswer sources;

    public Docs(List<Operation<?, ?>> operations, List<ProblemKind> problems) {
        this.operations = operations;
        this.problems = problems;
    }

    /** A list of links. */
    record ProblemIndex(List<ProblemKind> kinds) {
    }

    /** What the console can load. */
    record Console(List<Operation<?, ?>> operations) {
    }

    /** Nothing to fill in. */
    record Fixed() {
    }

    /** Where to start. */
    public byte[] entry() {
        return page("entry", () -> Templates.page("Docs", List.of(), "entry", EntryPage.of(operations)));
    }

    /** The page of an operation, if there is one of this id. */
    public Optional<byte[]> operation(String id) {
        return find(id).map(operation -> page("operation " + id,
                () -> Templates.page(id, List.of(START), "operation", OperationPage.of(operation, parts()))));
    }

    /** How the operation of this id calculates, if there is one. */
    public Optional<byte[]> calculation(String id) {
        return find(id).map(operation -> page("calculation " + id, () -> Templates.page("Calculation",
                List.of(START, above(operation)), "calculation", CalculationPage.of(operation))));
    }

    /** The whole answers to the examples of the operation of this id, if there is one. */
    public Optional<byte[]> answers(String id) {
        return find(id).map(operation -> page("answers " + id, () -> Templates.page("Whole answers",
                List.of(START, above(operation)), "answers", AnswersPage.of(operation))));
    }

    /** The page of a record that requests or answers hold, if there is one of this name. */
    public Optional<byte[]> part(String name) {
        return parts().page(name).map(content -> page("part " + name,
                () -> Templates.page(name, List.of(START), "record", content)));
    }

    private Optional<Operation<?, ?>> find(String id) {
        return operations.stream().filter(operation -> operation.id().equals(id)).findFirst();
    }

    private static Crumb above(Operation<?, ?> operation) {
        return new Crumb("/docs/operations/" + operation.id(), operation.id());
    }

    /** The console, which loads the contract of one operation. */
    public byte[] console() {
        return page("console", () -> Templates.page("Try it", List.of(START), "try", new Console(operations)));
    }

    /** Everything that can be found, as a list. */
    public byte[] search() {
        return page("search", () -> Templates.page("Search", List.of(START), "search", index().page()));
    }

    /** The same and every property, for the script of that page. */
    public byte[] searchIndex() {
        return page("search index", () -> index().json());
    }

    private SearchIndex index() {
        return new SearchIndex(operations, problems, parts());
    }

    /** What callers may expect of the service, with the standard of each. */
    public byte[] conventions() {
        return page("conventions", () -> Templates.page("Conventions", List.of(START), "conventions", new Fixed()));
    }

    /** How lists and tables are sent, with scripts that do it. */
    public byte[] bulk() {
        return page("bulk", () -> Templates.page("Lists and tables", List.of(START), "bulk", BulkPage.read()));
    }

    /** A script of that page, by its name. */
    public static byte[] script(String name) {
        return BulkPage.script(name);
    }

    /** What changed from version to version. */
    public byte[] changelog() {
        return page("changelog", () -> Templates.page("Changelog", List.of(START), "changelog",
                ChangelogPage.of()));
    }

    /** The same as a feed (Atom, RFC 4287). */
    public byte[] changelogFeed() {
        return page("feed", () -> Templates.text("feed", ChangelogPage.of()));
    }

    private synchronized PartIndex parts() {
        if (parts == null) {
            parts = new PartIndex(operations);
        }
        return parts;
    }

    /** The register of sources. */
    public byte[] sourcesPage() {
        return page("sources", () -> Templates.page("Sources", List.of(START), "sources", SourcesPage.of(sources())));
    }

    /** The register of sources, as the service answers it. */
    public synchronized SourcesAnswer sources() {
        if (sources == null) {
            sources = SourceRegister.of(operations);
        }
        return sources;
    }

    /** The first sources with results, as an example of the register. */
    public SourcesAnswer someSources() {
        return new SourcesAnswer(sources().sources().stream().filter(source -> !source.restsOn().isEmpty()).limit(2).toList(),
                sources().modelVersion());
    }

    /** Every kind of quantity, with its units. */
    public UnitsAnswer units() {
        return UnitRegister.of(operations);
    }

    /** The first kinds, as an example of them all. */
    public UnitsAnswer someUnits() {
        UnitsAnswer all = units();
        return new UnitsAnswer(all.kinds().subList(0, 2), all.modelVersion());
    }

    /** Every kind of problem. */
    public byte[] problems() {
        return page("problems", () -> Templates.page("Problems", List.of(START), "problems", new ProblemIndex(problems)));
    }

    /** The page of a kind of problem, if there is one of this name. */
    public Optional<byte[]> problem(String slug) {
        return problems.stream().filter(kind -> kind.slug().equals(slug)).findFirst().map(kind -> page("problem " + slug,
                () -> Templates.page(kind.title(), List.of(START, PROBLEMS), "problem", ProblemPage.of(kind))));
    }

    private byte[] page(String name, Supplier<byte[]> content) {
        return made.computeIfAbsent(name, key -> content.get()).clone();
    }
}
