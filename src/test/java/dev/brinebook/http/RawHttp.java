package dev.brinebook.http;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Sends bytes that no proper client would, and reads what comes back until the server closes. */
final class RawHttp {

    private RawHttp() {
    }

    /** The whole answer to a request line, headers (each ended by CRLF) and a body; the connection ends with it. */
    static String send(int port, String requestLine, String headers, String body) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(10_000);
            String request = requestLine + "\r\nHost: localhost\r\nConnection: close\r\n" + headers + "\r\n" + body;
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream answer = socket.getInputStream();
            return new String(answer.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
