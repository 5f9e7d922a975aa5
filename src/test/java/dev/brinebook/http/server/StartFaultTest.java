// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Main;
import dev.brinebook.http.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A service that cannot start says why, each fault in its own words. */
class StartFaultTest {

    /** 192.0.2.1 is for documentation and no machine's (RFC 5737); no name ends in .invalid (RFC 2606). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            192.0.2.1    | cannot listen on 192.0.2.1, port 0: HOST is not an address of this machine
            host.invalid | cannot listen: HOST host.invalid is not a known host name or address
            """)
    void namesTheFaultOfTheHost(String host, String message) {
        assertEquals(message, faultOf(new Settings(0, 0, host, 1_024, 1, 0, Set.of())));
    }

    @Test
    void saysWhichPortIsTaken() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String message = "cannot listen on 127.0.0.1, port " + taken.getLocalPort() + ": another process listens there";
            assertEquals(message, faultOf(new Settings(taken.getLocalPort(), 0, "127.0.0.1", 1_024, 1, 0, Set.of())));
            assertEquals(message, faultOf(new Settings(0, taken.getLocalPort(), "127.0.0.1", 1_024, 1, 0, Set.of())));
        }
    }

    private static String faultOf(Settings settings) {
        try (BrinebookServer server = Main.server(settings)) {
            return assertThrows(UncheckedIOException.class, server::start).getMessage();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            64   | 2000 | the process may open 64 files (ulimit -n), MAX_CONNECTIONS 2000 needs 2356: raise the limit or lower MAX_CONNECTIONS
            2355 | 2000 | the process may open 2355 files (ulimit -n), MAX_CONNECTIONS 2000 needs 2356: raise the limit or lower MAX_CONNECTIONS
            2356 | 2000 |
            1024 | 600  |
            -1   | 2000 |
            """)
    void saysHowManyFilesItNeeds(long limit, int maxConnections, String message) {
        assertEquals(Optional.ofNullable(message), Descriptors.shortage(limit, maxConnections));
    }
}
