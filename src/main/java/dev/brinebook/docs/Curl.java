// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** Calls as one types them into a shell, on the machine that the service runs on. */
final class Curl {

    private static final String HOST = "localhost:8080";

    private Curl() {
    }

    /** A POST with its body in the call, so that it needs no file. */
    static String post(Operation<?, ?> operation, String json) {
        return post(operation.path(), Operation.JSON, "", json);
    }

    /** A POST that asks for another form of the answer. */
    static String post(Operation<?, ?> operation, String json, String accept) {
        String file = accept.startsWith("text/") ? "" : " -o answer." + accept.substring(accept.indexOf('/') + 1);
        return post(operation.path(), Operation.JSON, " -H 'Accept: " + accept + "'" + file, json);
    }

    /** A POST of a text, with the settings that it needs in the query. */
    static String postText(Operation<?, ?> operation) {
        return post(operation.path() + "?" + query(operation.textForm().query().stream().filter(QueryParameter::required)
                .toList()), operation.textForm().mediaType(), "",
                operation.textForm().example().replace("\r\n", "\n"));
    }

    /** The GET form. */
    static String get(Operation<?, ?> operation) {
        return "curl -s '" + HOST + operation.path() + "?" + query(operation.query()) + "'";
    }

    private static String post(String target, String type, String accept, String body) {
        String data = type.equals(Operation.JSON) ? " -d" : " --data-binary";
        return "curl -s '" + HOST + target + "' -H 'Content-Type: " + type + "'" + accept + data + " @- <<'BODY'\n"
                + body.strip() + "\nBODY";
    }

    private static String query(List<QueryParameter> parameters) {
        return parameters.stream().map(parameter -> parameter.name() + "="
                + URLEncoder.encode(parameter.example(), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }
}
