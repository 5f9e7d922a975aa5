// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A curl command as pages show it: what a shell would send. */
public record ShownCall(String path, String headers, String body) {

    private static final Pattern COMMAND = Pattern.compile(
            "curl -s 'localhost:8080([^' ]+)'((?: -H '[^']+')*)(?: -o [a-z.]+)?(?: (?:-d|--data-binary) @- <<'BODY'\n(.*)\nBODY)?\\s*",
            Pattern.DOTALL);

    public static ShownCall of(String command) {
        Matcher read = COMMAND.matcher(command);
        assertTrue(read.matches(), command);
        return new ShownCall(read.group(1), read.group(2), read.group(3));
    }

    public Response send() {
        RequestSpecification request = Served.given();
        Matcher header = Pattern.compile("-H '([^:]+): ([^']+)'").matcher(headers);
        while (header.find()) {
            request.header(header.group(1), header.group(2));
        }
        return body == null ? request.get(path) : request.body(body.getBytes(StandardCharsets.UTF_8)).post(path);
    }
}
