package dev.brinebook;

import dev.brinebook.http.Settings;
import dev.brinebook.http.server.Descriptors;
import java.util.Optional;

/**
 * Where the process begins: looks whether it may open as many files as its settings need while it has opened next to none, then
 * starts {@link Main}. Each library is one more file, so that later there might be none left to say it with.
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
