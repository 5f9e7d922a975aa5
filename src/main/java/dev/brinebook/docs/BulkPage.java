// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.WireNames;
import dev.brinebook.contract.BulkParameter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The content of the page about lists and tables.
 *
 * @param parameters what the query may say
 * @param python the script in Python
 * @param node the script for Node
 */
record BulkPage(List<Parameter> parameters, String python, String node) {

    /** A parameter, what it does, and an example of it. */
    record Parameter(String name, String description, String example) {
    }

    static BulkPage read() {
        List<Parameter> parameters = Arrays.stream(BulkParameter.values()).filter(parameter -> !parameter.description().isEmpty())
                .map(parameter -> new Parameter(WireNames.of(parameter), parameter.description().replace("`", ""),
                        WireNames.of(parameter) + "=" + parameter.example())).toList();
        return new BulkPage(parameters, text("bulk.py"), text("bulk.mjs"));
    }

    private static String text(String name) {
        return new String(script(name), StandardCharsets.UTF_8);
    }

    /** A script of the page, as it is served. */
    static byte[] script(String name) {
        try (InputStream script = Objects.requireNonNull(BulkPage.class.getResourceAsStream(name), name)) {
            return script.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
