// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.Operation;
import dev.brinebook.contract.ContractFiles;
import dev.brinebook.contract.Examples;
import dev.brinebook.contract.PageRoute;
import dev.brinebook.http.exchange.Cached;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Routes of the contract: the whole, that of one operation, and the examples that both refer to. */
final class ContractRoutes {

    private static final String JSON = "application/json";
    private static final String FILE = "file";
    private static final String ENDING = ".json";

    private final Map<PageRoute, Handler> routes = new LinkedHashMap<>();

    ContractRoutes(List<Operation<?, ?>> operations) {
        routes.put(new PageRoute("readContractAsYaml", "/openapi.yaml", "The contract as YAML", "This document as YAML, with every "
                + "operation, its schemas and examples. Choose it to read, or to generate a client. Programs that take JSON choose "
                + "readContractAsJson.", "application/yaml"),
                context -> send(context, "application/yaml", ContractFiles.yaml()));
        routes.put(new PageRoute("readContractAsJson", "/openapi.json", "The contract as JSON", "This document as JSON, with the same "
                + "content as readContractAsYaml. Choose it for programs that look for an operation. For one that is known choose "
                + "readOperationContract, which is much shorter.", JSON), context -> send(context, JSON, ContractFiles.json()));
        routes.put(new PageRoute("readOperationContract", "/openapi/{file}", "The contract of one operation", "This document "
                + "cut down to one operation and the schemas that it needs, complete in itself. Choose it when you know which operation "
                + "to call. To find one, choose readLlmsText or readContractAsJson.", JSON)
                .choosing(FILE, operations.stream().map(operation -> operation.id() + ENDING).toList()),
                ContractRoutes::ofOperation);
        Map<String, String> files = Examples.files(operations);
        routes.put(new PageRoute("readExample", "/" + Examples.FOLDER + "/{file}", "An example request or answer", "A file that an "
                + "example in this document refers to by externalValue: a request as sent, or its answer. All households in them are "
                + "invented.", JSON).also(files.values().stream().distinct().sorted().toList()).choosing(FILE, List.copyOf(files.keySet())),
                context -> example(context, files));
    }

    /** Routes with their texts in the contract. */
    Map<PageRoute, Handler> routes() {
        return routes;
    }

    private static void ofOperation(Context context) {
        String file = context.pathParam(FILE);
        if (!file.endsWith(ENDING)) {
            throw nothing();
        }
        send(context, JSON, ContractFiles.json(file.substring(0, file.length() - ENDING.length())).orElseThrow(ContractRoutes::nothing));
    }

    private static void example(Context context, Map<String, String> files) {
        String file = context.pathParam(FILE);
        if (!files.containsKey(file)) {
            throw nothing();
        }
        send(context, files.get(file), ContractFiles.example(file));
    }

    private static void send(Context context, String mediaType, byte[] document) {
        Cached.mark(context.contentType(mediaType).result(document));
    }

    private static ProblemException nothing() {
        return new ProblemException(ProblemType.NOT_FOUND, Message.of("docRoutes.noPageName"));
    }
}
