// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;
import java.util.Set;

/**
 * Label of a request in metrics and the log, with few possible values.
 *
 * @param route template of the route, such as {@code /problems/{kind}}
 * @param method its method, or {@code other}
 * @param status status of the answer
 */
public record RequestLabel(String route, String method, int status) {

    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST", "OPTIONS");

    public static RequestLabel of(Context context) {
        Endpoint endpoint = context.endpoints().lastHttpEndpoint();
        boolean matched = endpoint != null && endpoint.method.isHttpMethod();
        String method = context.req().getMethod();
        return matched ? new RequestLabel(endpoint.path, known(method), context.statusCode())
                : unmatched(method, context.statusCode());
    }

    /** Of a request that no route was looked for. */
    public static RequestLabel unmatched(String method, int status) {
        return new RequestLabel("unmatched", known(method), status);
    }

    private static String known(String method) {
        return method != null && METHODS.contains(method) ? method : "other";
    }
}
