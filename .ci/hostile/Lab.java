import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What all trials share, and the breaches they find.
 *
 * @param work folder for logs
 * @param port of the service, metrics on the one above
 */
record Lab(Path jar, Path work, int port, List<String> breaches) {

    /** The default of the service. */
    static final int MAX_CONNECTIONS = 2_000;
    /** As many as may be, but for those of the well-behaved caller, so that nobody is closed to make room. */
    static final int ALL_BUT_A_FEW = MAX_CONNECTIONS - 10;
    /** What one attacker may hold while it must not be felt by others: a twentieth. */
    static final int SHARE = MAX_CONNECTIONS / 20;
    /** From when a limit is reached until the answer is out, on one processor that others load as well. */
    static final double TOLERANCE_SECONDS = 2;
    static final String ATTACKER = "127.0.0.3";
    static final String GOOD = "127.0.0.2";

    private static final int CALLERS = 20;

    Scene scene(String trial, Map<String, String> environment) throws IOException, InterruptedException {
        return scene(trial, environment, Requests.ordinary(false));
    }

    /** A service with this environment, and a well-behaved caller that makes these requests. */
    Scene scene(String trial, Map<String, String> environment, Supplier<byte[]> good)
            throws IOException, InterruptedException {
        return new Scene(trial, this, environment, good);
    }

    void breach(boolean breached, String what) {
        if (breached) {
            breaches.add(what);
            System.out.println("BREACH: " + what);
        }
    }

    /** The address of one of twenty callers, each of whom holds no more than a share of all connections. */
    static String caller(int number) {
        return "127.0.1." + (1 + number % CALLERS);
    }

    static String bearer(String name) {
        return "Authorization: Bearer " + key(name);
    }

    private static String key(String name) {
        return "an-invented-key-of-" + name + "-0123456789";
    }

    /** A file of the keys of these callers. */
    String keys(String... names) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            try {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(Requests.bytes(key(name)));
                lines.add(name + ":" + HexFormat.of().formatHex(hash));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException(e);
            }
        }
        return Files.write(work.resolve("keys"), lines).toString();
    }
}
