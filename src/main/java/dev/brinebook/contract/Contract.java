// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.Operation;
import io.swagger.v3.core.util.Json31;
import io.swagger.v3.core.util.Yaml31;
import io.swagger.v3.oas.models.OpenAPI;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Makes the OpenAPI document from the same list of operations that the server routes. The build keeps it in {@code openapi/}. */
public final class Contract {

    /** Where any of the operations is answered line by line. */
    public static final String BULK_PATH = "/v1/bulk/{calculator}";

    /** Where a table to fill in for that is got. */
    public static final String TEMPLATE_PATH = BULK_PATH + "/template";

    /** Where single results of any of the operations are explained. */
    public static final String EXPLANATION_PATH = "/v1/explanation/{calculator}";

    private final byte[] yaml;
    private final byte[] json;

    /** Builds the document; this takes seconds, so that what is served is the file that {@link ContractFiles} reads. */
    public Contract(List<Operation<?, ?>> operations, List<PageRoute> pages, Class<?> problem) {
        OpenAPI document = new DocumentBuilder(operations, pages, problem).build();
        try {
            this.yaml = Yaml31.pretty().writeValueAsString(document).getBytes(StandardCharsets.UTF_8);
            this.json = (Json31.mapper().writeValueAsString(document) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where results of an operation are explained. */
    public static String explanationPath(Operation<?, ?> operation) {
        return EXPLANATION_PATH.replace("{calculator}", operation.id());
    }

    public byte[] yaml() {
        return yaml.clone();
    }

    /** The same document, without indent. */
    public byte[] json() {
        return json.clone();
    }
}
