// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Callers that take connections: very many ordinary ones, heads that do not come, CONNECT. */
final class Connections {

    /** Half of the heap: what is held for connections alone leaves the rest for work. */
    private static final long MOST_HELD_BYTES = 48_000_000;
    private static final long MOST_GROWTH_BYTES = 4_000_000;
    private static final int DESCRIPTORS_AT_REST = 150;
    private static final int MOST_THREADS = 160;

    private final Lab lab;

    Connections(Lab lab) {
        this.lab = lab;
    }

    private static void ordinaryCallers(Attack attack, double pauseSeconds) {
        for (int each = 0; each < Lab.ALL_BUT_A_FEW; each++) {
            int number = each;
            attack.calls(each * 0.005, Lab.caller(each), () -> Requests.fromBrowser(number), Integer.MAX_VALUE, pauseSeconds);
        }
    }

    void active() throws IOException, InterruptedException {
        String label = Lab.ALL_BUT_A_FEW + " active keep-alive connections";
        Scene scene = lab.scene("active", Map.of());
        Scene.Outcome held = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 4, attack -> ordinaryCallers(attack, 10), 2, attack -> {
            boolean twice = attack.areServed(2, 60);
            if (!scene.service().isAlive()) {
                return false;
            }
            Attack more = new Attack(scene.service());
            for (int each = 0; each < 40; each++) {
                more.calls(0, Lab.ATTACKER, () -> Requests.fromBrowser(0), 1, 0);
            }
            more.begin();
            boolean answered = more.areAnswered(1, 10);
            more.close();
            Scene.printOnly("40 connections more, beyond " + Lab.MAX_CONNECTIONS, more.tally);
            return twice && answered && more.tally.cutOffs() == 0;
        });
        judgeOrdinary(scene, label, held);
        judgeHeld(scene, label, held.state());
    }

    /** They are well-behaved as well: none is cut off, and most are answered by one processor that has just started. */
    private static void judgeOrdinary(Scene scene, String label, Scene.Outcome outcome) {
        Tally tally = outcome.attack().tally;
        // A service that is full closes connections that are idle; one that calls at that very moment may call again (RFC 9112, 9.5).
        scene.holds(tally.cutOffs() <= tally.answers() / 100 || Scene.isSlow(outcome), label, tally.cutOffs() + " got no answer");
        scene.holds(2 * tally.of(200) >= tally.answers() || !Processor.isQuiet(outcome.othersShare()) || Scene.isSlow(outcome), label, "they got " + tally);
    }

    private static void judgeHeld(Scene scene, String label, Service.State state) throws IOException, InterruptedException {
        if (state == null) {
            return;
        }
        scene.holds(state.descriptors() >= Lab.ALL_BUT_A_FEW, label, "only " + state.descriptors() + " descriptors are held");
        scene.holds(state.heapBytes() <= MOST_HELD_BYTES, label, state.heapBytes() + " bytes are held");
        scene.holds(state.threads() <= MOST_THREADS, label, state.threads() + " threads");
        Service.State after = scene.service().state();
        for (int tries = 0; tries < 10 && after != null && after.descriptors() > DESCRIPTORS_AT_REST; tries++) {
            Thread.sleep(1_000);
            after = scene.service().state();
        }
        scene.holds(after != null && after.descriptors() <= DESCRIPTORS_AT_REST, label, "descriptors are not given back: " + after);
    }

    /** Ten minutes; SOAK_MINUTES says otherwise. */
    void soak() throws IOException, InterruptedException {
        int minutes = Integer.parseInt(System.getenv().getOrDefault("SOAK_MINUTES", "10"));
        String label = Lab.ALL_BUT_A_FEW + " active connections for " + minutes + " min";
        Scene scene = lab.scene("soak", Map.of());
        List<Service.State> states = new ArrayList<>();
        Scene.Outcome outcome = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 5, attack -> ordinaryCallers(attack, 10), 1, attack -> {
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
            scene.holds(grown <= MOST_GROWTH_BYTES, label, "the heap grew by " + grown + " bytes");
        }
    }

    void heads() throws IOException, InterruptedException {
        int seconds = Lab.REQUEST_SECONDS;
        Scene scene = lab.scene("heads", Lab.IMPATIENT);
        String label = Lab.SHARE + " dripping heads";
        Scene.Outcome dripping = scene.attack(label, Scene.Owed.IN_TIME, seconds + Lab.TOLERANCE_SECONDS, attack -> {
            for (int each = 0; each < Lab.SHARE; each++) {
                attack.sends(Lab.ATTACKER, null, Scripts.dripping("POST /v1/assessment HTTP/1.1\r\nX-Long: ", 0.5));
            }
        });
        scene.judgeEnded(label, dripping, seconds);

        label = Lab.ALL_BUT_A_FEW + " half heads, the rest 1.5 s later";
        Scene.Outcome halves = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 4, attack -> {
            attack.awaitsParts();
            for (int each = 0; each < Lab.ALL_BUT_A_FEW; each++) {
                String whole = new String(Requests.fromBrowser(each), StandardCharsets.ISO_8859_1);
                attack.sends(Lab.caller(each), null, List.of(new Scripts.Part(0, Requests.bytes(whole.substring(0, 150))),
                        new Scripts.Part(1.5, Requests.bytes(whole.substring(150)))));
            }
        });
        long unanswered = halves.attack().inParts().stream().filter(each -> each.answer() == null).count();
        scene.holds(unanswered == 0 || Scene.isSlow(halves), label, unanswered + " got no answer");

        label = Lab.MAX_CONNECTIONS + " at once";
        Scene.Outcome atOnce = scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 4, attack -> {
            for (int each = 0; each < Lab.MAX_CONNECTIONS; each++) {
                attack.calls(0, Lab.caller(each), () -> Requests.fromBrowser(0), 1, 0);
            }
        }, Scene.MOST_PAIRS, attack -> attack.areAnswered(1, 60));
        scene.holds(atOnce.attack().tally.cutOffs() == 0 || Scene.isSlow(atOnce), label, atOnce.attack().tally.cutOffs() + " got no answer");
    }

    void connect() throws IOException, InterruptedException {
        String label = Lab.SHARE + " CONNECT with Connection: close";
        byte[] request = Requests.bytes("CONNECT localhost:443 HTTP/1.1\r\nHost: localhost:443\r\nConnection: close\r\n\r\n");
        Scene scene = lab.scene("connect", Map.of());
        Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, 3, attack -> {
            for (int each = 0; each < Lab.SHARE; each++) {
                attack.asksOnce(Lab.ATTACKER, request);
            }
        });
        scene.holds(outcome.attack().tally.of(200) == 0 && outcome.attack().tally.cutOffs() == 0, label,
                "answered with " + outcome.attack().tally);
        scene.holds(outcome.attack().notClosed() == 0, label, outcome.attack().notClosed() + " sockets are held after 3 s");
    }
}
