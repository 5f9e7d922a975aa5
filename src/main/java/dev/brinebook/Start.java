// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import dev.brinebook.http.Settings;
import dev.brinebook.http.server.Descriptors;
import java.util.Optional;

/**
 * Entry point: checks that the process may open the files that its settings need, while it has opened almost none, then starts {@link
 * Main}. Each library is one more file, so later none might be left to report the error.
 */
public final class Start {

    private Start() {
    }

    public static void main(String[] arguments) {
        Optional<String> shortage = arguments.length == 0 ? shortage() : Optional.empty();
        if (shortage.isPresent()) {
            System.err.println(shortage.get());
            System.exit(1);
        }
        Main.main(arguments);
    }

    private static Optional<String> shortage() {
        try {
            return Descriptors.shortage(Settings.from(System.getenv()));
        } catch (IllegalArgumentException saidByMain) {
            return Optional.empty();
        }
    }
}
