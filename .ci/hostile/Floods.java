// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Callers that send what is dear to answer as fast as it is answered. */
final class Floods {

    /** With what the well-behaved caller and the compiler take meanwhile. */
    private static final double MOST_PROCESSOR_SECONDS_EACH = 0.2;
    /** A sheet takes a tenth of a second once it is warm, ten times that in a process that has just started. */
    private static final int FEWEST_SHEETS = 3;
    private static final double MOST_PROCESSOR_SECONDS_EACH_SHEET = 2;
    private static final int FEWEST_SERVED = 10;
    private static final int FEWEST_WITH_TABLES = 3;
    private static final double MOST_PROCESSOR_SECONDS_EACH_WITH_TABLES = 5;

    private final Lab lab;

    Floods(Lab lab) {
        this.lab = lab;
    }

    /** Some of a flood must be answered, none cut off, and each answer cost no more than its share of processor time. */
    private static void judgeFlood(Scene scene, String label, Scene.Outcome outcome) {
        judgeFlood(scene, label, outcome, FEWEST_SERVED, MOST_PROCESSOR_SECONDS_EACH);
    }

    private static void judgeFlood(Scene scene, String label, Scene.Outcome outcome, int fewestServed, double mostSecondsEach) {
        Tally tally = outcome.attack().tally;
        scene.holds(tally.cutOffs() == 0, label, tally.cutOffs() + " got no answer");
        scene.holds(tally.served() >= fewestServed, label, "only " + tally.served() + " are answered: " + tally);
        scene.holds(outcome.state() == null || outcome.secondsEach() <= mostSecondsEach, label,
                "an answer takes " + outcome.secondsEach() + " s of processor time");
    }

    /** Lets the service do what it does only for the first of such requests. */
    private static void askOnce(Scene scene, byte[] request) throws IOException, InterruptedException {
        Attack first = new Attack(scene.service());
        first.calls(0, Lab.ATTACKER, () -> request, 1, 0);
        first.begin();
        scene.holds(first.areAnswered(1, 30), "the first request", "is not answered");
        first.close();
    }

    void faults() throws IOException, InterruptedException {
        String label = "6 callers, 24,000 unknown keys in 252 KB";
        byte[] request = Requests.post(Requests.CONVERSION, Requests.JSON, Requests.padded(Requests.unknownKeys(24_000), 252_000));
        Scene scene = lab.scene("faults", Map.of());
        judgeFlood(scene, label, scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
            for (int each = 0; each < 6; each++) {
                attack.floods(Lab.ATTACKER, () -> request);
            }
        }));
    }

    void agents() throws IOException, InterruptedException {
        String label = "60 agents, messages of 185 KB";
        List<byte[]> messages = Requests.agentMessages(185_000);
        Scene scene = lab.scene("agents", Map.of());
        askOnce(scene, messages.get(messages.size() - 1)); // the first message of a process makes the schemas of all tools
        judgeFlood(scene, label, scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
            for (int each = 0; each < 60; each++) {
                byte[] message = messages.get(each % messages.size());
                attack.floods(Lab.ATTACKER, () -> message);
            }
        }));
    }

    void sheets() throws IOException, InterruptedException {
        String label = "60 callers of sheets as PDF";
        Supplier<byte[]> sheets = Requests.sheets();
        Scene scene = lab.scene("sheets", Map.of());
        askOnce(scene, sheets.get());
        judgeFlood(scene, label, scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
            for (int each = 0; each < 60; each++) {
                attack.floods(Lab.ATTACKER, sheets);
            }
        }), FEWEST_SHEETS, MOST_PROCESSOR_SECONDS_EACH_SHEET);
    }

    void tables() throws IOException, InterruptedException {
        String label = "12 callers of reviews with large tables, half in lists";
        Scene scene = lab.scene("tables", Map.of());
        judgeFlood(scene, label, scene.attack(label, Scene.Owed.ANSWERS_OR_REFUSALS, 10, attack -> {
            for (int each = 0; each < 6; each++) {
                attack.floods(Lab.ATTACKER, () -> Requests.post(Requests.REVIEW, Requests.JSON, Requests.settingsOfUnevenWeek()));
                attack.floods(Lab.ATTACKER, () -> Requests.post(Requests.BULK_REVIEW, Requests.LINES,
                        (Requests.settingsOfUnevenWeek() + "\n").repeat(3)));
            }
        }), FEWEST_WITH_TABLES, MOST_PROCESSOR_SECONDS_EACH_WITH_TABLES);
    }

    void mixed() throws IOException, InterruptedException {
        String label = "96 connections of all of these";
        List<byte[]> messages = Requests.agentMessages(185_000);
        byte[] unknown = Requests.post(Requests.CONVERSION, Requests.JSON, Requests.padded(Requests.unknownKeys(24_000), 252_000));
        Supplier<byte[]> sheets = Requests.sheets();
        String half = Requests.head("POST", Requests.CONVERSION, "Content-Type: " + Requests.JSON, "Content-Length: 600") + "{";
        Scene scene = lab.scene("mixed", Map.of());
        scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
            for (int each = 0; each < 16; each++) {
                byte[] message = messages.get(each % messages.size());
                attack.floods(Lab.ATTACKER, () -> message);
                attack.floods(Lab.ATTACKER, () -> unknown);
                attack.floods(Lab.ATTACKER, sheets);
                attack.sends(Lab.ATTACKER, null, Scripts.dripping(half, 0.5));
                attack.sends(Lab.ATTACKER, null, Scripts.dripping("GET / HTTP/1.1\r\nX-Long: ", 0.5));
            }
            Bodies.silentStreams(attack, Lab.ATTACKER, 16);
        });
    }

    void wrongKeys() throws IOException, InterruptedException {
        String label = "60 callers with wrong keys";
        Scene scene = lab.scene("keys", lab.withKeys(), Requests.ordinary(false, Lab.bearer("good")));
        Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, 5, attack -> {
            for (int each = 0; each < 60; each++) {
                int number = each;
                attack.floods(Lab.ATTACKER, () -> Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion(),
                        Lab.bearer("nobody-" + number + "-" + System.nanoTime())));
            }
        });
        Tally tally = outcome.attack().tally;
        scene.holds(tally.of(200) == 0, label, "a wrong key was answered");
        scene.holds(tally.cutOffs() == 0, label, tally.cutOffs() + " got no answer");
        scene.holds(tally.of(429) > 0, label, tally.of(401) + " wrong keys, and no 429");
    }
}
