// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.model.Model;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The headers of responses beyond those of the transport: each described once, and listed where it is sent. */
final class ResponseHeaders {

    static final String ETAG = "ETag";
    static final String RETRY_AFTER = "Retry-After";
    static final String LANGUAGE = "Content-Language";
    static final String MODEL = "Model-Version";
    static final String SEPARATOR = "Table-Separator";
    static final String PASSED = "Passed-Columns";
    static final String POLICY = "Content-Security-Policy";

    /** On every response, beside the few with the same value everywhere, of which the description of the whole speaks. */
    static final List<String> ALWAYS = List.of("Cache-Control", "Vary", "X-Request-Id");

    /** On every response of a path that keys and rates concern, where the service has a rate limit: listed with 429 alone. */
    static final List<String> RATE = List.of("RateLimit", "RateLimit-Policy");

    private static final Map<String, Header> ALL = all();

    private ResponseHeaders() {
    }

    /** The components that responses refer to. */
    static Map<String, Header> components() {
        return ALL;
    }

    /** The same response, which also has the headers of these names. */
    static ApiResponse on(ApiResponse response, List<String> names) {
        names.forEach(name -> response.addHeaderObject(name, new Header().$ref("#/components/headers/" + component(name))));
        return response;
    }

    private static Map<String, Header> all() {
        Map<String, Header> all = new LinkedHashMap<>();
        text(all, "Accept-Post", "The media types that a body may have (RFC 9110).", "application/json");
        text(all, "Cache-Control", "Who may keep the response, and for how long (RFC 9111).", "no-store");
        text(all, LANGUAGE, "Language of the texts in the answer, chosen by Accept-Language where there are several.", "en");
        text(all, POLICY, "What the page may load: nothing from another host.", "default-src 'none'");
        text(all, ETAG, "Version of the answer. Send it as If-None-Match to get 304 while it is current. With Cache-Control no-store it is "
                + "for a copy that you keep yourself: no cache keeps one.", "\"5d41402abc4b2a76b9719d91\"");
        text(all, MODEL, "Version of the formulas and data that calculated the answer, as its modelVersion.", Model.CURRENT.version());
        text(all, PASSED, "Of a table: the first of the columns that the answers repeat, percent-encoded, with commas between. The header "
                + "row has all.", "Customer%20no");
        text(all, "RateLimit", "Only if the service has a rate limit: what is left of it, and the seconds until there is more.",
                "\"minute\";r=59;t=1");
        text(all, "RateLimit-Policy", "Only if the service has a rate limit: the limit.", "\"minute\";q=60;w=60");
        number(all, RETRY_AFTER, "Seconds to wait before trying again.");
        text(all, SEPARATOR, "Of a table: the separator of its cells.", "semicolon");
        text(all, "Vary", "The headers of the request that the answer depends on.", "Accept-Encoding");
        text(all, "WWW-Authenticate", "How to send a key (RFC 6750).", "Bearer realm=\"brinebook\"");
        text(all, "X-Request-Id", "ID of the request: that of its X-Request-Id if short and safe, or a new one. It is in the log.",
                "b1946ac92492d234");
        return all;
    }

    private static void text(Map<String, Header> all, String name, String description, String example) {
        all.put(component(name), new Header().description(description).schema(DocumentBuilder.text()).example(example));
    }

    private static void number(Map<String, Header> all, String name, String description) {
        Schema<Object> whole = new JsonSchema();
        whole.setTypes(Set.of("integer"));
        all.put(component(name), new Header().description(description).schema(whole).example(2));
    }

    private static String component(String header) {
        return header.replace("-", "");
    }
}
