// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import dev.brinebook.api.WireNames;
import dev.brinebook.caution.Caution;
import dev.brinebook.contract.Examples;
import dev.brinebook.contract.OperationSchemas;
import dev.brinebook.docs.UnitRegister;
import dev.brinebook.model.Changelog;
import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Pages to look things up, as resources. A model may never see them, so nothing lives only here. */
final class ReferencePages {

    static final String SCHEME = "brinebook://";

    private static final String TEXT = "text/plain";
    private static final String JSON = "application/json";
    private static final Map<String, Object> ANNOTATIONS = Json.object("audience", List.of("assistant"), "priority", 0.3);
    private static final Map<String, String> PAGES = new LinkedHashMap<>();
    private static final Map<String, String> TEMPLATES = new LinkedHashMap<>();

    static {
        PAGES.put("operations", "Every operation in one line");
        PAGES.put("units", "Units with their factors");
        PAGES.put("glossary", "Terms with their meanings");
        PAGES.put("cautions", "Codes of cautions with severity and sentence");
        PAGES.put("sources", "Keys of sources with their kind");
        PAGES.put("changelog", "What changed in each version of the model");
        TEMPLATES.put("operation/{operation}", "What an operation takes");
        TEMPLATES.put("part/{part}", "What a part of requests holds");
        TEMPLATES.put("schema/{operation}", "JSON Schema of a request and its answer");
        TEMPLATES.put("example/{operation}/{name}", "A committed request, invented");
        TEMPLATES.put("term/{term}", "Meaning of a term");
        TEMPLATES.put("caution/{code}", "Sentence and source of a caution");
        TEMPLATES.put("source/{key}", "A source");
    }

    private final Map<String, Operation<?, ?>> operations = new LinkedHashMap<>();
    private final Notation notation;
    private OperationSchemas schemas;

    ReferencePages(List<Operation<?, ?>> operations, Notation notation) {
        operations.forEach(operation -> this.operations.put(operation.id(), operation));
        this.notation = notation;
    }

    Map<String, Object> list() {
        return Json.object("resources", PAGES.entrySet().stream().map(page -> Json.object("uri", SCHEME + page.getKey(), "name",
                page.getKey(), "title", page.getValue(), "mimeType", TEXT, "annotations", ANNOTATIONS)).toList());
    }

    Map<String, Object> templates() {
        return Json.object("resourceTemplates", TEMPLATES.entrySet().stream().map(page -> Json.object("uriTemplate",
                SCHEME + page.getKey(), "name", page.getKey().replaceAll("/.*", ""), "title", page.getValue(), "mimeType",
                isJson(page.getKey()) ? JSON : TEXT, "annotations", ANNOTATIONS)).toList());
    }

    private static boolean isJson(String path) {
        return path.startsWith("schema/") || path.startsWith("example/");
    }

    /** The page at {@code uri}; throws {@link RpcFault} where there is none. */
    Map<String, Object> read(String uri, Caller caller) {
        String path = uri != null && uri.startsWith(SCHEME) ? uri.substring(SCHEME.length()).replace("%20", " ") : "";
        String text = PAGES.containsKey(path) ? page(path, caller) : entry(path.split("/", 3), caller);
        if (text == null) {
            String known = SCHEME + WireNames.nearest(path, List.copyOf(PAGES.keySet())).orElse("operations");
            throw new RpcFault(caller.revision().isOpened() ? RpcFault.RESOURCE_NOT_FOUND : RpcFault.INVALID_PARAMS, 200,
                    "There is no such resource.", Json.object("uri", uri == null || !uri.matches("[\\w:/.-]{1,80}") ? "?" : uri,
                    "nearest", known));
        }
        return Json.object("contents", List.of(Json.object("uri", uri, "mimeType", isJson(path) ? JSON : TEXT, "text", text)));
    }

    /** What can stand in the place of a name of a template, such as {@code code}. */
    List<String> values(String name, String operation) {
        return switch (name) {
            case "operation" -> List.copyOf(operations.keySet());
            case "part" -> List.copyOf(notation.parts().byName().keySet());
            case "code" -> WireNames.all(Caution.class);
            case "key" -> List.copyOf(Sources.all().keySet());
            case "term" -> List.copyOf(Glossary.terms().keySet());
            case "units" -> List.of("us", "metric");
            case "name" -> operations.containsKey(operation) ? operations.get(operation).examples() : List.of();
            default -> List.of();
        };
    }

    private String page(String path, Caller caller) {
        return switch (path) {
            case "operations" -> lines(operations.values(), operation -> operation.id() + ": " + operation.summary() + ".");
            case "units" -> lines(UnitRegister.of(List.copyOf(operations.values())).kinds(), kind -> kind.kind()
                    + " (base unit " + kind.baseUnit() + "):\n" + lines(kind.units(), unit -> "  " + unit.symbol() + ": " + unit.name()
                    + "; factor " + unit.factor()).stripTrailing());
            case "glossary" -> lines(Glossary.terms().entrySet(), term -> term.getKey() + ": " + term.getValue());
            case "cautions" -> lines(Arrays.asList(Caution.values()), caution -> caution(caution, caller));
            case "sources" -> lines(Sources.all().values(), source -> source.key() + " (" + WireNames.of(source.kind()) + ")");
            default -> changes();
        };
    }

    private static <T> String lines(Collection<T> all, Function<T, String> line) {
        return all.stream().map(line).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String caution(Caution caution, Caller caller) {
        return WireNames.of(caution) + " (" + WireNames.of(caution.severity()) + "): "
                + Message.of(caution).in(caller.calculation().language());
    }

    private static String changes() {
        return lines(Changelog.versions(), version -> version.number() + " of " + version.date() + ":\n" + lines(version.entries(),
                entry -> "  " + WireNames.of(entry.kind()) + " " + entry.id() + ": " + entry.text() + " " + entry.effect())
                .stripTrailing());
    }

    private String entry(String[] path, Caller caller) {
        String name = path.length > 1 ? path[1] : "";
        Operation<?, ?> operation = operations.get(name);
        return switch (path[0]) {
            case "operation" -> operation == null ? null : notation.operation(operation);
            case "part" -> notation.parts().byName().containsKey(name) ? notation.part(name) : null;
            case "schema" -> operation == null ? null : Json.text(Json.object("request", schemas().request(operation), "answer",
                    schemas().answer(operation)));
            case "example" -> operation == null || path.length < 3 || !operation.examples().contains(path[2]) ? null
                    : Examples.text(operation, path[2], "request");
            case "term" -> Glossary.terms().containsKey(name) ? name + ": " + Glossary.terms().get(name) + "\n" : null;
            case "caution" -> Arrays.stream(Caution.values()).filter(one -> WireNames.of(one).equals(name)).findFirst()
                    .map(one -> caution(one, caller) + "\nSource: " + Sources.get(one.sourceKey()).cited() + "\n").orElse(null);
            case "source" -> Sources.all().containsKey(name) ? source(Sources.all().get(name)) : null;
            default -> null;
        };
    }

    private static String source(Source source) {
        return source.key() + ": " + source.cited() + "\nKind: " + WireNames.of(source.kind()) + "\nTaken from it: " + source.takes()
                + "\n";
    }

    /** Built for the first that asks, as it takes some hundred milliseconds. */
    private synchronized OperationSchemas schemas() {
        if (schemas == null) {
            schemas = new OperationSchemas(List.copyOf(operations.values()));
        }
        return schemas;
    }
}
