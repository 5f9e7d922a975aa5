// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;

/**
 * A server that does nothing but parse the JSON it is sent and write a given answer, to know what the stack costs without
 * Brinebook: as Javalin or Jetty are when nothing is set. Arguments: {@code javalin} or {@code jetty}, port, then of each path the
 * file of its answer, {@code /path=file}.
 */
public final class Peer {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, JsonNode> ANSWERS = new HashMap<>();

    private Peer() {
    }

    public static void main(String[] arguments) throws Exception {
        int port = Integer.parseInt(arguments[1]);
        for (int i = 2; i < arguments.length; i++) {
            String[] answer = arguments[i].split("=", 2);
            ANSWERS.put(answer[0], JSON.readTree(new File(answer[1])));
        }
        if (arguments[0].equals("javalin")) {
            javalin(port);
        } else {
            jetty(port);
        }
    }

    private static void javalin(int port) {
        Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.jetty.host = "127.0.0.1";
            config.jetty.port = port;
            config.routes.get("/health/ready", context -> context.result("ready"));
            config.routes.post("/*", context -> context.contentType("application/json")
                    .result(answer(context.path(), context.bodyAsBytes())));
        }).start();
    }

    private static void jetty(int port) throws Exception {
        Server server = new Server();
        ServerConnector connector = new ServerConnector(server);
        connector.setHost("127.0.0.1");
        connector.setPort(port);
        server.addConnector(connector);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) throws Exception {
                byte[] body = Content.Source.asInputStream(request).readAllBytes();
                String path = request.getHttpURI().getCanonicalPath();
                byte[] answer = path.equals("/health/ready") ? new byte[0] : answer(path, body);
                response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json");
                response.write(true, ByteBuffer.wrap(answer), callback);
                return true;
            }
        });
        server.start();
        server.join();
    }

    private static byte[] answer(String path, byte[] body) throws IOException {
        if (!JSON.readTree(body).isObject()) {
            throw new IOException("no JSON object");
        }
        return JSON.writeValueAsBytes(ANSWERS.get(path));
    }
}
