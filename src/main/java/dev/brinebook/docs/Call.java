// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A request to show, to the service on the reader's own machine.
 *
 * @param target path and query
 * @param type media type of the body; empty for a GET
 * @param accept media type wanted, empty for the default
 * @param file where an answer that is no text is kept, else empty
 * @param body the body; empty for a GET
 */
record Call(String target, String type, String accept, String file, String body) {

    static final String HOST = "localhost:8080";

    /** A POST with its body in the call, so that it needs no file. */
    static Call post(Operation<?, ?> operation, String json) {
        return new Call(operation.path(), Operation.JSON, "", "", json.strip());
    }

    /** A POST that asks for another form of the answer. */
    static Call post(Operation<?, ?> operation, String json, String accept) {
        String file = accept.startsWith("text/") ? "" : "answer." + accept.substring(accept.indexOf('/') + 1);
        return new Call(operation.path(), Operation.JSON, accept, file, json.strip());
    }

    /** A POST of a text, with the settings that it needs in the query. */
    static Call postText(Operation<?, ?> operation) {
        List<QueryParameter> required = operation.textForm().query().stream().filter(QueryParameter::required).toList();
        return new Call(operation.path() + (required.isEmpty() ? "" : "?" + query(required)), operation.textForm().mediaType(), "", "",
                operation.textForm().example().replace("\r\n", "\n").strip());
    }

    /** The GET form. */
    static Call get(Operation<?, ?> operation) {
        return get(operation.path() + "?" + query(operation.query()));
    }

    /** A GET. */
    static Call get(String target) {
        return new Call(target, "", "", "", "");
    }

    boolean isGet() {
        return type.isEmpty();
    }

    /** The whole address, as programs need it. */
    String address() {
        return "http://" + HOST + target;
    }

    /** As one types it into a shell. */
    String curl() {
        String headers = (isGet() ? "" : " -H 'Content-Type: " + type + "'") + (accept.isEmpty() ? "" : " -H 'Accept: " + accept + "'")
                + (file.isEmpty() ? "" : " -o " + file);
        String data = type.equals(Operation.JSON) ? " -d" : " --data-binary";
        return "curl -s '" + HOST + target + "'" + headers + (isGet() ? "" : data + " @- <<'BODY'\n" + body + "\nBODY");
    }

    private static String query(List<QueryParameter> parameters) {
        return parameters.stream().map(parameter -> parameter.name() + "="
                + URLEncoder.encode(parameter.example(), StandardCharsets.UTF_8)).collect(Collectors.joining("&"));
    }
}
