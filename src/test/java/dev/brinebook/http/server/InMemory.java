// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.LocalConnector;
import org.eclipse.jetty.server.Server;

/** The whole service, asked over memory instead of a socket: the bytes that come back are those that would go over the wire. */
public final class InMemory implements AutoCloseable {

    private static final int LONGEST_ANSWER_SECONDS = 60;
    private static final byte[] END_OF_HEADERS = {'\r', '\n', '\r', '\n'};

    private final BrinebookServer service;
    private final LocalConnector connector;

    /**
     * What came back.
     *
     * @param status of HTTP
     * @param type the media type without its parameters, empty when there is none
     */
    public record Reply(int status, String type, byte[] body) {
    }

    /** A service of its own. */
    public InMemory() {
        this(Main.OPERATIONS);
    }

    InMemory(List<Operation<?, ?>> operations) {
        this.service = Served.start(operations, 0, Set.of());
        Server server = service.jetty();
        HttpConnectionFactory http = server.getConnectors()[0].getConnectionFactory(HttpConnectionFactory.class);
        this.connector = new LocalConnector(server, new HttpConnectionFactory(http.getHttpConfiguration()));
        server.addConnector(connector);
        try {
            connector.start();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    /** Sends a request of HTTP/1.0, whose answer ends with the connection, so that it comes in one piece. */
    public Reply ask(byte[] head, byte[] body) {
        ByteBuffer request = ByteBuffer.allocate(head.length + body.length).put(head).put(body).flip();
        try {
            ByteBuffer answer = connector.getResponse(request, LONGEST_ANSWER_SECONDS, TimeUnit.SECONDS);
            byte[] bytes = new byte[answer.remaining()];
            answer.get(bytes);
            return reply(bytes);
        } catch (Exception e) {
            throw new IllegalStateException("no answer", e);
        }
    }

    private static Reply reply(byte[] bytes) {
        int end = endOfHeaders(bytes);
        String[] lines = new String(bytes, 0, end, StandardCharsets.ISO_8859_1).split("\r\n");
        String type = "";
        for (String line : lines) {
            if (line.toLowerCase(Locale.ROOT).startsWith("content-type:")) {
                type = line.substring("content-type:".length()).split(";")[0].strip();
            }
        }
        byte[] body = new byte[bytes.length - end - END_OF_HEADERS.length];
        System.arraycopy(bytes, end + END_OF_HEADERS.length, body, 0, body.length);
        return new Reply(Integer.parseInt(lines[0].split(" ")[1]), type, body);
    }

    private static int endOfHeaders(byte[] bytes) {
        for (int at = 0; at + END_OF_HEADERS.length <= bytes.length; at++) {
            int same = 0;
            while (same < END_OF_HEADERS.length && bytes[at + same] == END_OF_HEADERS[same]) {
                same++;
            }
            if (same == END_OF_HEADERS.length) {
                return at;
            }
        }
        throw new IllegalStateException("no end of the headers in " + bytes.length + " bytes");
    }

    @Override
    public void close() {
        service.close();
    }
}
