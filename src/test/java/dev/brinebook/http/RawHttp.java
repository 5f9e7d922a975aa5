// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** Sends bytes that no proper client would, and reads what comes back until the server closes. */
public final class RawHttp {

    private RawHttp() {
    }

    /** The whole answer to a request line, headers (each ended by CRLF) and a body; the connection ends with it. */
    public static String send(int port, String requestLine, String headers, String body) throws IOException {
        return new String(exchange(port, requestLine, headers, body), StandardCharsets.UTF_8);
    }

    /** The same without a body, each byte of the answer as one character. */
    public static String sendBytes(int port, String requestLine, String headers) throws IOException {
        return new String(exchange(port, requestLine, headers, ""), StandardCharsets.ISO_8859_1);
    }

    /** What comes back for bytes that are sent as they are, one for each character. */
    public static String sendAsItIs(int port, String bytes) throws IOException {
        return new String(exchange(port, bytes), StandardCharsets.UTF_8);
    }

    private static byte[] exchange(int port, String requestLine, String headers, String body) throws IOException {
        return exchange(port, requestLine + "\r\nHost: localhost\r\nConnection: close\r\n" + headers + "\r\n" + body);
    }

    private static byte[] exchange(int port, String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            return socket.getInputStream().readAllBytes();
        }
    }
}
