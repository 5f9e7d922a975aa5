// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import java.io.File;
import java.io.IOException;
import java.nio.ByteBuffer;
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
 * Brinebook: as Javalin or Jetty are when nothing is set. Arguments: {@code javalin} or {@code jetty}, port, answer file.
 */
public final class Peer {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Peer() {
    }

    public static void main(String[] arguments) throws Exception {
        int port = Integer.parseInt(arguments[1]);
        JsonNode answer = JSON.readTree(new File(arguments[2]));
        if (arguments[0].equals("javalin")) {
            javalin(port, answer);
        } else {
            jetty(port, answer);
        }
    }

    private static void javalin(int port, JsonNode answer) {
        Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.jetty.host = "127.0.0.1";
            config.jetty.port = port;
            config.routes.post("/*", context -> {
                parse(context.bodyAsBytes());
                context.contentType("application/json").result(JSON.writeValueAsBytes(answer));
            });
        }).start();
    }

    private static void jetty(int port, JsonNode answer) throws Exception {
        Server server = new Server();
        ServerConnector connector = new ServerConnector(server);
        connector.setHost("127.0.0.1");
        connector.setPort(port);
        server.addConnector(connector);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) throws Exception {
                parse(Content.Source.asInputStream(request).readAllBytes());
                response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json");
                response.write(true, ByteBuffer.wrap(JSON.writeValueAsBytes(answer)), callback);
                return true;
            }
        });
        server.start();
        server.join();
    }

    private static void parse(byte[] body) throws IOException {
        if (!JSON.readTree(body).isObject()) {
            throw new IOException("no JSON object");
        }
    }
}
