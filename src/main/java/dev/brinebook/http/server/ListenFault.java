// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import java.net.BindException;
import java.nio.channels.UnresolvedAddressException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why a port could not be opened, in one line for an operator. */
final class ListenFault {

    /** The server says which of the ports it was. */
    private static final Pattern PORT = Pattern.compile("Failed to bind to .*:(\\d+)");

    private ListenFault() {
    }

    /** Error of {@code host} or a port, from the failure of the server below. */
    static String of(String host, Throwable failure) {
        String port = "";
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            Matcher found = PORT.matcher(String.valueOf(cause.getMessage()));
            port = found.find() ? ", port " + found.group(1) : port;
            if (cause instanceof UnresolvedAddressException) {
                return "cannot listen: HOST " + host + " is not a known host name or address";
            }
            if (cause instanceof BindException refused) {
                return "cannot listen on " + host + port + ": " + reason(String.valueOf(refused.getMessage()));
            }
        }
        return "cannot listen on " + host + port + ": " + failure.getMessage();
    }

    /** The words of the operating system, explained where they are known. */
    private static String reason(String words) {
        if (words.contains("in use")) {
            return "another process listens there";
        }
        return words.contains("assign requested address") ? "HOST is not an address of this machine" : words;
    }
}
