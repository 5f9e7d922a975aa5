import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Callers that mean harm, or are very many, against the packaged service under the flags of its image, all on loopback.
 *
 * <pre>
 * java Hostile jar work-folder port [trial...]</pre>
 *
 * Prints a row for each attack and ends with 1 after any BREACH.
 */
final class Hostile {

    private static final int MAX_CONNECTIONS = 2_000;
    /** As many as may be, but for those of the well-behaved caller, so that nobody is closed to make room. */
    private static final int ALL_BUT_A_FEW = MAX_CONNECTIONS - 10;
    /** What one attacker may hold while it must not be felt by others: a twentieth. */
    private static final int SHARE = MAX_CONNECTIONS / 20;
    /** Half of the heap: what is held for connections alone leaves the rest for work. */
    private static final long MOST_HELD_BYTES = 48_000_000;
    /** From when a limit is reached until the answer is out, on one processor that others load as well. */
    private static final double TOLERANCE_SECONDS = 2;
    private static final int DESCRIPTORS_AT_REST = 150;
    private static final int MOST_THREADS = 160;
    private static final double MOST_PROCESSOR_SECONDS_EACH = 0.1;
    private static final String ATTACKER = "127.0.0.3";
    private static final String GOOD = "127.0.0.2";

    private final Path jar;
    private final Path work;
    private final int port;
    private final List<String> breaches = new ArrayList<>();
    private final Map<String, Trial> trials = new LinkedHashMap<>();

    private interface Trial {
        void run() throws IOException, InterruptedException;
    }

    private Hostile(Path jar, Path work, int port) {
        this.jar = jar;
        this.work = work;
        this.port = port;
        trials.put("active", this::active);
        trials.put("bodies", this::bodies);
        trials.put("heads", this::heads);
        trials.put("faults", this::faults);
        trials.put("agents", this::agents);
        trials.put("silent", this::silent);
        trials.put("long", this::longStreams);
        trials.put("sheets", this::sheets);
        trials.put("mixed", this::mixed);
        trials.put("stops", this::stops);
        trials.put("connect", this::connect);
        trials.put("keys", this::keys);
        trials.put("soak", this::soak);
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Hostile hostile = new Hostile(Path.of(arguments[0]), Path.of(arguments[1]), Integer.parseInt(arguments[2]));
        List<String> names = List.of(arguments).subList(3, arguments.length);
        if (!hostile.trials.keySet().containsAll(names)) {
            System.err.println("trials are " + String.join(", ", hostile.trials.keySet()));
            System.exit(2);
        }
        System.exit(hostile.run(names) ? 0 : 1);
    }

    private boolean run(List<String> names) throws IOException, InterruptedException {
        long began = System.nanoTime();
        System.out.println("Java " + Service.version(Service.java()) + " " + String.join(" ", Service.imageFlags()));
        Scene.printHead();
        for (Map.Entry<String, Trial> each : trials.entrySet()) {
            if (names.isEmpty() ? !each.getKey().equals("soak") : names.contains(each.getKey())) {
                try {
                    each.getValue().run();
                } catch (IllegalStateException | IOException broken) {
                    breaches.add(each.getKey() + ": cannot go on: " + broken);
                    System.out.println("BREACH: " + breaches.get(breaches.size() - 1));
                }
            }
        }
        System.out.printf("%d breaches in %d s%n", breaches.size(), (System.nanoTime() - began) / 1_000_000_000L);
        return breaches.isEmpty();
    }

    private Scene scene(String trial, Map<String, String> environment) throws IOException, InterruptedException {
        return scene(trial, environment, Requests.ordinary(false));
    }

    private Scene scene(String trial, Map<String, String> environment, Supplier<byte[]> good) throws IOException, InterruptedException {
        return new Scene(trial, jar, port, work, environment, GOOD, good, breaches);
    }

    /** One of twenty callers, each of whom holds no more than a share. */
    private static String caller(int number) {
        return "127.0.1." + (1 + number % 20);
    }

    private static void ordinaryCallers(Attack attack, double pauseSeconds) {
        for (int each = 0; each < ALL_BUT_A_FEW; each++) {
            int number = each;
            attack.calls(each * 0.005, caller(each), () -> Requests.fromBrowser(number), Integer.MAX_VALUE, pauseSeconds);
        }
    }

    private void active() throws IOException, InterruptedException {
        String label = ALL_BUT_A_FEW + " active keep-alive connections";
        try (Scene scene = scene("active", Map.of())) {
            Scene.Outcome held = scene.attack(label, Scene.Owed.ANSWERS, 4, attack -> ordinaryCallers(attack, 5), attack -> {
                boolean twice = attack.areServed(2, 60);
                if (!scene.service().isAlive()) {
                    return false;
                }
                Attack more = new Attack(scene.service());
                for (int each = 0; each < 40; each++) {
                    more.calls(0, ATTACKER, () -> Requests.fromBrowser(0), 1, 0);
                }
                more.begin();
                boolean answered = more.areAnswered(1, 10);
                more.close();
                Scene.printOnly("40 connections more, beyond " + MAX_CONNECTIONS, more.tally);
                return twice && answered && more.tally.cutOffs() == 0;
            });
            judgeOrdinary(scene, label, held);
            judgeHeld(scene, label, held.state());
        }
    }

    /** They are well-behaved as well: none is cut off, and none refused by a service that has its processor for itself. */
    private static void judgeOrdinary(Scene scene, String label, Scene.Outcome outcome) {
        Tally tally = outcome.attack().tally;
        scene.holds(tally.cutOffs() == 0, label, tally.cutOffs() + " got no answer");
        scene.holds(tally.answers() == tally.of(200) || !Processor.isQuiet(outcome.othersShare()), label, "they got " + tally);
    }

    private static void judgeHeld(Scene scene, String label, Service.State state) throws IOException, InterruptedException {
        if (state == null) {
            return;
        }
        scene.holds(state.descriptors() >= ALL_BUT_A_FEW, label, "only " + state.descriptors() + " descriptors are held");
        scene.holds(state.heapBytes() <= MOST_HELD_BYTES, label, state.heapBytes() + " bytes are held");
        scene.holds(state.threads() <= MOST_THREADS, label, state.threads() + " threads");
        Service.State after = scene.service().state();
        for (int tries = 0; tries < 10 && after != null && after.descriptors() > DESCRIPTORS_AT_REST; tries++) {
            Thread.sleep(1_000);
            after = scene.service().state();
        }
        scene.holds(after != null && after.descriptors() <= DESCRIPTORS_AT_REST, label, "descriptors are not given back: " + after);
    }

    private void bodies() throws IOException, InterruptedException {
        int seconds = 3;
        try (Scene scene = scene("bodies", Map.of("REQUEST_SECONDS", "" + seconds))) {
            halfBodies(scene, "110 half bodies, then silence", 110, Scene.Owed.IN_TIME, List.of(60.0), seconds);
            halfBodies(scene, "110 half bodies, a byte a second", 110, Scene.Owed.IN_TIME, List.of(1.0), seconds);
            halfBodies(scene, "500 half bodies, silent and dripping", 500, Scene.Owed.ANSWERS, List.of(0.3, 0.7, 1.0, 60.0), seconds);
        }
    }

    /** Each sends a head and a byte, then a byte after each of its pauses. */
    private void halfBodies(Scene scene, String label, int number, Scene.Owed owed, List<Double> pauses, int seconds)
            throws IOException, InterruptedException {
        String head = Requests.head("POST", Requests.CONVERSION, "Content-Type: " + Requests.JSON, "Content-Length: 600");
        Scene.Outcome outcome = scene.attack(label, owed, seconds + TOLERANCE_SECONDS, attack -> {
            for (int each = 0; each < number; each++) {
                attack.sends(ATTACKER, null, dripping(head + "{", pauses.get(each % pauses.size()), 20));
            }
        });
        List<Scripts.InParts> all = outcome.attack().inParts();
        judgeEnded(scene, label, all, seconds);
        long without = all.stream().filter(each -> each.hasEnded() && (each.answer() == null
                || !List.of(408, 429, 503).contains(each.answer().status()))).count();
        scene.holds(without == 0, label, without + " ended without 408, or 503 or 429 for who asks too much");
    }

    private static void judgeEnded(Scene scene, String label, List<Scripts.InParts> all, int seconds) {
        long late = all.stream().filter(each -> !each.hasEnded() || each.seconds() > seconds + TOLERANCE_SECONDS).count();
        scene.holds(late == 0, label, late + " of " + all.size() + " were not ended after " + seconds + " s");
    }

    private static List<Scripts.Part> dripping(String start, double pauseSeconds, double forSeconds) {
        List<Scripts.Part> parts = new ArrayList<>(List.of(new Scripts.Part(0, Requests.bytes(start))));
        for (int each = 1; each * pauseSeconds < forSeconds; each++) {
            parts.add(new Scripts.Part(each * pauseSeconds, Requests.bytes("a")));
        }
        return parts;
    }

    private void heads() throws IOException, InterruptedException {
        int seconds = 3;
        try (Scene scene = scene("heads", Map.of("REQUEST_SECONDS", "" + seconds))) {
            String label = SHARE + " dripping heads";
            Scene.Outcome dripping = scene.attack(label, Scene.Owed.IN_TIME, seconds + TOLERANCE_SECONDS, attack -> {
                for (int each = 0; each < SHARE; each++) {
                    attack.sends(ATTACKER, null, dripping("POST /v1/assessment HTTP/1.1\r\nX-Long: ", 0.5, 20));
                }
            });
            judgeEnded(scene, label, dripping.attack().inParts(), seconds);

            label = ALL_BUT_A_FEW + " half heads, the rest 1.5 s later";
            Scene.Outcome halves = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 4, attack -> {
                for (int each = 0; each < ALL_BUT_A_FEW; each++) {
                    String whole = new String(Requests.fromBrowser(each), StandardCharsets.ISO_8859_1);
                    attack.sends(caller(each), null, List.of(new Scripts.Part(0, Requests.bytes(whole.substring(0, 150))),
                            new Scripts.Part(1.5, Requests.bytes(whole.substring(150)))));
                }
            });
            long unanswered = halves.attack().inParts().stream().filter(each -> each.answer() == null).count();
            scene.holds(unanswered == 0, label, unanswered + " got no answer");

            label = MAX_CONNECTIONS + " at once";
            Scene.Outcome atOnce = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 4, attack -> {
                for (int each = 0; each < MAX_CONNECTIONS; each++) {
                    attack.calls(0, caller(each), () -> Requests.fromBrowser(0), 1, 0);
                }
            }, attack -> attack.areAnswered(1, 20));
            scene.holds(atOnce.attack().tally.cutOffs() == 0, label, atOnce.attack().tally.cutOffs() + " got no answer");
        }
    }

    /** A flood must be answered, and cost no more than its share of processor time for each answer. */
    private static void judgeFlood(Scene scene, String label, Scene.Outcome outcome) {
        Tally tally = outcome.attack().tally;
        scene.holds(tally.cutOffs() == 0, label, tally.cutOffs() + " got no answer");
        scene.holds(outcome.state() == null || outcome.secondsEach() <= MOST_PROCESSOR_SECONDS_EACH, label,
                "an answer takes " + outcome.secondsEach() + " s of processor time");
    }

    private void faults() throws IOException, InterruptedException {
        String label = "6 callers, 24,000 unknown keys in 252 KB";
        byte[] request = Requests.post(Requests.CONVERSION, Requests.JSON, Requests.padded(Requests.unknownKeys(24_000), 252_000));
        try (Scene scene = scene("faults", Map.of())) {
            judgeFlood(scene, label, scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
                for (int each = 0; each < 6; each++) {
                    attack.floods(ATTACKER, () -> request);
                }
            }));
        }
    }

    private void agents() throws IOException, InterruptedException {
        String label = "60 agents, messages of 185 KB";
        List<byte[]> messages = Requests.agentMessages(185_000);
        try (Scene scene = scene("agents", Map.of())) {
            judgeFlood(scene, label, scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
                for (int each = 0; each < 60; each++) {
                    byte[] message = messages.get(each % messages.size());
                    attack.floods(ATTACKER, () -> message);
                }
            }));
        }
    }

    private static void silentStreams(Attack attack, int number, String... headers) {
        List<String> all = new ArrayList<>(List.of("Content-Type: " + Requests.LINES, "Transfer-Encoding: chunked"));
        all.addAll(List.of(headers));
        for (int each = 0; each < number; each++) {
            attack.sends(ATTACKER, null, List.of(new Scripts.Part(0, Requests.bytes(
                    Requests.head("POST", Requests.BULK, all.toArray(String[]::new))))));
        }
    }

    private void silent() throws IOException, InterruptedException {
        try (Scene scene = scene("silent", Map.of(), Requests.ordinary(true))) {
            scene.attack("64 silent streams, another address", Scene.Owed.IN_TIME, 4, attack -> silentStreams(attack, 64));
        }
        Map<String, String> keys = Map.of("API_KEYS_FILE", keys("good", "attacker").toString());
        try (Scene scene = scene("silent-keyed", keys, Requests.ordinary(true, bearer("good")))) {
            scene.attack("64 silent streams, another key", Scene.Owed.IN_TIME, 4,
                    attack -> silentStreams(attack, 64, bearer("attacker")));
        }
    }

    private static String bearer(String name) {
        return "Authorization: Bearer an-invented-key-of-" + name + "-0123456789";
    }

    private Path keys(String... names) throws IOException {
        Path file = work.resolve("keys");
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            String key = bearer(name).substring("Authorization: Bearer ".length());
            try {
                lines.add(name + ":" + HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Requests.bytes(key))));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException(e);
            }
        }
        return Files.write(file, lines);
    }

    private void longStreams() throws IOException, InterruptedException {
        int seconds = 2;
        int lines = 3 * seconds + 2;
        String label = "16 streams, a line a second for " + lines + " s";
        try (Scene scene = scene("long", Map.of("REQUEST_SECONDS", "" + seconds))) {
            Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, lines + 1, attack -> {
                for (int each = 0; each < 16; each++) {
                    stream(attack, lines, (each & 1) == 0, (each & 2) == 0, (each & 4) == 0);
                }
            });
            for (Scripts.InParts each : outcome.attack().inParts()) {
                boolean whole = each.answer() != null && each.answer().status() == 200 && each.answer().lines() == lines;
                int number = outcome.attack().inParts().indexOf(each);
                scene.holds(whole, label, ((number & 1) == 0 ? "chunked" : "Content-Length")
                        + ((number & 2) == 0 ? ", with" : ", without") + " Expect, " + ((number & 4) == 0 ? "first" : "second")
                        + " on its connection: " + (each.answer() == null ? "cut off after " + each.seconds() + " s"
                                : each.answer().status() + " with " + each.answer().lines() + " lines"));
            }
        }
    }

    private static void stream(Attack attack, int lines, boolean chunked, boolean expects, boolean first) {
        String line = Requests.water() + "\n";
        List<String> headers = new ArrayList<>(List.of("Content-Type: " + Requests.LINES,
                chunked ? "Transfer-Encoding: chunked" : "Content-Length: " + lines * line.length()));
        if (expects) {
            headers.add("Expect: 100-continue");
        }
        List<Scripts.Part> parts = new ArrayList<>();
        parts.add(new Scripts.Part(0, Requests.bytes(Requests.head("POST", Requests.BULK, headers.toArray(String[]::new)))));
        String sent = chunked ? Integer.toHexString(line.length()) + "\r\n" + line + "\r\n" : line;
        for (int each = 0; each < lines; each++) {
            parts.add(new Scripts.Part(0.2 + each, Requests.bytes(sent)));
        }
        if (chunked) {
            parts.add(new Scripts.Part(0.2 + lines, Requests.bytes("0\r\n\r\n")));
        }
        attack.sends(ATTACKER, first ? null : Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion()), parts);
    }

    private void sheets() throws IOException, InterruptedException {
        String label = "60 callers of sheets as PDF";
        Supplier<byte[]> sheets = Requests.sheets();
        try (Scene scene = scene("sheets", Map.of())) {
            Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
                for (int each = 0; each < 60; each++) {
                    attack.floods(ATTACKER, sheets);
                }
            });
            scene.holds(outcome.attack().tally.cutOffs() == 0, label, outcome.attack().tally.cutOffs() + " got no answer");
        }
    }

    private void mixed() throws IOException, InterruptedException {
        String label = "96 connections of all of these";
        List<byte[]> messages = Requests.agentMessages(185_000);
        byte[] unknown = Requests.post(Requests.CONVERSION, Requests.JSON, Requests.padded(Requests.unknownKeys(24_000), 252_000));
        Supplier<byte[]> sheets = Requests.sheets();
        String half = Requests.head("POST", Requests.CONVERSION, "Content-Type: " + Requests.JSON, "Content-Length: 600") + "{";
        try (Scene scene = scene("mixed", Map.of())) {
            scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
                for (int each = 0; each < 16; each++) {
                    byte[] message = messages.get(each % messages.size());
                    attack.floods(ATTACKER, () -> message);
                    attack.floods(ATTACKER, () -> unknown);
                    attack.floods(ATTACKER, sheets);
                    attack.sends(ATTACKER, null, dripping(half, 0.5, 20));
                    attack.sends(ATTACKER, null, dripping("GET / HTTP/1.1\r\nX-Long: ", 0.5, 20));
                }
                silentStreams(attack, 16);
            });
        }
    }

    private void stops() throws IOException, InterruptedException {
        String label = "8 stops under 64 keep-alive connections";
        Tally all = new Tally();
        for (int stop = 0; stop < 8; stop++) {
            Path log = work.resolve("stops-" + stop + ".log");
            try (Service service = Service.start(jar, port, log, Map.of("DRAIN_SECONDS", "" + stop % 2))) {
                Attack attack = new Attack(service);
                for (int each = 0; each < 64; each++) {
                    attack.calls(0, caller(each), () -> Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion()),
                            Integer.MAX_VALUE, each % 4 * 0.003);
                }
                attack.begin();
                boolean ended;
                try (attack) {
                    Thread.sleep(1_500);
                    attack.connectNoMore(); // as a proxy that sees readiness go
                    Thread.sleep(50);
                    service.terminate();
                    ended = service.endsWithin(30);
                }
                all.add(attack.tally);
                breach(!ended, "stops: " + label + ": it does not end");
                breach(!service.faultsLogged().isEmpty(), "stops: log: " + service.faultsLogged());
            }
        }
        Scene.printOnly(label, all);
        breach(all.cutOffs() > 0, "stops: " + label + ": " + all.cutOffs() + " of " + all.answers() + " answers were lost");
        breach(all.of(200) + all.of(503) != all.answers() || all.refusalsWithoutRetry() > 0, "stops: " + label + ": " + all);
    }

    private void breach(boolean breached, String what) {
        if (breached) {
            breaches.add(what);
            System.out.println("BREACH: " + what);
        }
    }

    private void connect() throws IOException, InterruptedException {
        String label = SHARE + " CONNECT with Connection: close";
        byte[] request = Requests.bytes("CONNECT localhost:443 HTTP/1.1\r\nHost: localhost:443\r\nConnection: close\r\n\r\n");
        try (Scene scene = scene("connect", Map.of())) {
            Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, 3, attack -> {
                for (int each = 0; each < SHARE; each++) {
                    attack.asksOnce(ATTACKER, request);
                }
            });
            scene.holds(outcome.attack().tally.of(200) == 0 && outcome.attack().tally.cutOffs() == 0, label,
                    "answered with " + outcome.attack().tally);
            scene.holds(outcome.attack().notClosed() == 0, label, outcome.attack().notClosed() + " sockets are held after 3 s");
        }
    }

    private void keys() throws IOException, InterruptedException {
        String label = "60 callers with wrong keys";
        try (Scene scene = scene("keys", Map.of("API_KEYS_FILE", keys("good").toString()), Requests.ordinary(false, bearer("good")))) {
            Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
                for (int each = 0; each < 60; each++) {
                    int number = each;
                    attack.floods(ATTACKER, () -> Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion(),
                            bearer("nobody-" + number + "-" + System.nanoTime())));
                }
            });
            Tally tally = outcome.attack().tally;
            scene.holds(tally.of(200) == 0, label, "a wrong key was answered");
            scene.holds(tally.cutOffs() == 0, label, tally.cutOffs() + " got no answer");
            scene.holds(tally.of(429) > 0, label, tally.of(401) + " wrong keys, and no 429");
        }
    }

    /** Ten minutes; SOAK_MINUTES says otherwise. */
    private void soak() throws IOException, InterruptedException {
        int minutes = Integer.parseInt(System.getenv().getOrDefault("SOAK_MINUTES", "10"));
        String label = ALL_BUT_A_FEW + " active connections for " + minutes + " min";
        try (Scene scene = scene("soak", Map.of())) {
            List<Service.State> states = new ArrayList<>();
            Scene.Outcome outcome = scene.attack(label, Scene.Owed.ANSWERS, 5, attack -> ordinaryCallers(attack, 10), attack -> {
                boolean twice = attack.areServed(2, 60);
                for (int minute = 0; minute < minutes && scene.service().isAlive(); minute++) {
                    try {
                        Service.State state = scene.service().state();
                        states.add(state);
                        System.out.println("minute " + minute + ": " + state + ", answers " + attack.tally);
                    } catch (IOException e) {
                        throw new IllegalStateException(e);
                    }
                    Thread.sleep(60_000);
                }
                return twice;
            });
            judgeOrdinary(scene, label, outcome);
            judgeHeld(scene, label, outcome.state());
            if (outcome.state() != null && !states.isEmpty() && states.get(0) != null) {
                long grown = outcome.state().heapBytes() - states.get(0).heapBytes();
                scene.holds(grown <= 4_000_000, label, "the heap grew by " + grown + " bytes");
            }
        }
    }
}
