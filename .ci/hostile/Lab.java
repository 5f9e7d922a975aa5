// SPDX-License-Identifier: Apache-2.0
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

/** What all trials share, and the breaches they find. */
final class Lab implements AutoCloseable {

    /** The default of the service. */
    static final int MAX_CONNECTIONS = 2_000;
    /** As many as may be, but for those of the well-behaved caller, so that nobody is closed to make room. */
    static final int ALL_BUT_A_FEW = MAX_CONNECTIONS - 10;
    /** What one attacker may hold while it must not be felt by others: a twentieth. */
    static final int SHARE = MAX_CONNECTIONS / 20;
    /** From when a limit is reached until the answer is out, on one processor that others load as well. */
    static final double TOLERANCE_SECONDS = 2;
    /** What a head or a body may take where that is attacked. */
    static final int REQUEST_SECONDS = 3;
    static final Map<String, String> IMPATIENT = Map.of("REQUEST_SECONDS", "" + REQUEST_SECONDS);
    static final String ATTACKER = "127.0.0.3";
    static final String GOOD = "127.0.0.2";

    private static final int CALLERS = 20;
    private static final double WARM_UP_SECONDS = 4;
    private static final double SETTLE_SECONDS = 1;

    private final Path jar;
    private final Path work;
    private final int port;
    private final List<String> breaches = new ArrayList<>();
    private Running running;

    /**
     * The service that runs.
     *
     * @param trial that it was started for
     */
    private record Running(String trial, Map<String, String> environment, Service service) {
    }

    /** A folder for logs, and the port of the service, with metrics on the one above. */
    Lab(Path jar, Path work, int port) {
        this.jar = jar;
        this.work = work;
        this.port = port;
    }

    Path jar() {
        return jar;
    }

    Path work() {
        return work;
    }

    int port() {
        return port;
    }

    List<String> breaches() {
        return breaches;
    }

    Scene scene(String trial, Map<String, String> environment) throws IOException, InterruptedException {
        return scene(trial, environment, Requests.ordinary(false));
    }

    /**
     * A well-behaved caller that makes these requests of a service with this environment: the one that runs, which has stood the
     * attacks before, or else a new one.
     */
    Scene scene(String trial, Map<String, String> environment, Supplier<byte[]> good)
            throws IOException, InterruptedException {
        boolean goesOn = running != null && running.environment().equals(environment) && running.service().isAlive();
        if (!goesOn) {
            close();
            running = new Running(trial, environment, Service.start(jar, port, work.resolve(trial + ".log"), environment));
        }
        GoodCaller caller = new GoodCaller(port, GOOD, good);
        caller.warmUp(goesOn ? SETTLE_SECONDS : WARM_UP_SECONDS);
        running.service().keepOnItsProcessor();
        return new Scene(trial, this, running.service(), caller);
    }

    /** Ends the service that runs; what it logged must be free of its own faults. */
    @Override
    public void close() throws IOException, InterruptedException {
        if (running == null) {
            return;
        }
        Service service = running.service();
        String since = running.trial() + " and what came after it on the same service: ";
        running = null;
        service.terminate();
        breach(!service.endsWithin(30), since + "the process does not end");
        service.close();
        List<String> faults = service.faultsLogged();
        breach(!faults.isEmpty(), since + faults.size() + " lines of faults, the first: "
                + (faults.isEmpty() ? "" : faults.get(0).substring(0, Math.min(400, faults.get(0).length()))));
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

    /** A service that asks for keys, and has two of them. */
    Map<String, String> withKeys() throws IOException {
        List<String> lines = new ArrayList<>();
        for (String name : List.of("good", "attacker")) {
            try {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(Requests.bytes(key(name)));
                lines.add(name + ":" + HexFormat.of().formatHex(hash));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException(e);
            }
        }
        return Map.of("API_KEYS_FILE", Files.write(work.resolve("keys"), lines).toString());
    }
}
