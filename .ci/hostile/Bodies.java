// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Callers whose bodies do not come, or come slowly as they should. */
final class Bodies {

    private final Lab lab;

    Bodies(Lab lab) {
        this.lab = lab;
    }

    void bodies() throws IOException, InterruptedException {
        int seconds = Lab.REQUEST_SECONDS;
        Scene scene = lab.scene("bodies", Lab.IMPATIENT);
        halfBodies(scene, "110 half bodies, then silence", 110, Scene.Owed.IN_TIME, List.of(60.0), seconds);
        halfBodies(scene, "110 half bodies, a byte a second", 110, Scene.Owed.IN_TIME, List.of(1.0), seconds);
        halfBodies(scene, "500 half bodies, silent and dripping", 500, Scene.Owed.ANSWERS, List.of(0.3, 0.7, 1.0, 60.0),
                seconds);
    }

    /** Each sends a head and a byte, then a byte after each of its pauses. */
    private void halfBodies(Scene scene, String label, int number, Scene.Owed owed, List<Double> pauses, int seconds)
            throws IOException, InterruptedException {
        String head = Requests.head("POST", Requests.CONVERSION, "Content-Type: " + Requests.JSON, "Content-Length: 600");
        Scene.Outcome outcome = scene.attack(label, owed, seconds + Lab.TOLERANCE_SECONDS, attack -> {
            attack.awaitsParts();
            for (int each = 0; each < number; each++) {
                attack.sends(Lab.ATTACKER, null, Scripts.dripping(head + "{", pauses.get(each % pauses.size())));
            }
        });
        List<Scripts.InParts> all = outcome.attack().inParts();
        scene.judgeEnded(label, outcome, seconds);
        long without = all.stream().filter(each -> each.hasEnded() && (each.answer() == null
                || !List.of(408, 429, 503).contains(each.answer().status()))).count();
        scene.holds(without == 0, label, without + " ended without 408, or 503 or 429 for who asks too much");
    }

    void longStreams() throws IOException, InterruptedException {
        int seconds = Lab.REQUEST_SECONDS;
        int lines = 3 * seconds + 2;
        String label = "16 streams, a line a second for " + lines + " s";
        Scene scene = lab.scene("long", Lab.IMPATIENT);
        Scene.Outcome outcome = scene.attack(label, Scene.Owed.IN_TIME, lines + 1, attack -> {
            attack.awaitsParts();
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
        attack.sends(Lab.ATTACKER, first ? null : Requests.post(Requests.CONVERSION, Requests.JSON, Requests.conversion()), parts);
    }

    void silent() throws IOException, InterruptedException {
        lab.scene("silent", Map.of(), Requests.ordinary(true)).attack("64 silent streams, another address", Scene.Owed.IN_TIME, 4,
                attack -> silentStreams(attack, Lab.ATTACKER, 64));
    }

    void silentWithKeys() throws IOException, InterruptedException {
        lab.scene("keys", lab.withKeys(), Requests.ordinary(true, Lab.bearer("good"))).attack(
                "64 silent streams, same address, another key", Scene.Owed.IN_TIME, 4,
                attack -> silentStreams(attack, Lab.GOOD, 64, Lab.bearer("attacker")));
    }

    static void silentStreams(Attack attack, String from, int number, String... headers) {
        List<String> all = new ArrayList<>(List.of("Content-Type: " + Requests.LINES, "Transfer-Encoding: chunked"));
        all.addAll(List.of(headers));
        for (int each = 0; each < number; each++) {
            attack.sends(from, null, List.of(new Scripts.Part(0, Requests.bytes(
                    Requests.head("POST", Requests.BULK, all.toArray(String[]::new))))));
        }
    }
}
