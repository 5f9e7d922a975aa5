// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Callers that mean harm, or are very many, against the packaged service under the flags of its image, all on loopback.
 *
 * <pre>
 * java Hostile jar work-folder port [trial...]</pre>
 *
 * Prints a row for each attack and ends with 1 after any BREACH.
 */
final class Hostile {

    private static final String SOAK = "soak";

    private final Lab lab;
    private final Map<String, Trial> trials = new LinkedHashMap<>();

    private interface Trial {
        void run() throws IOException, InterruptedException;
    }

    private Hostile(Lab lab) {
        this.lab = lab;
        Connections connections = new Connections(lab);
        Bodies bodies = new Bodies(lab);
        Floods floods = new Floods(lab);
        // One after another those that can share a service.
        trials.put("active", connections::active);
        trials.put("faults", floods::faults);
        trials.put("agents", floods::agents);
        trials.put("sheets", floods::sheets);
        trials.put("tables", floods::tables);
        trials.put("mixed", floods::mixed);
        trials.put("connect", connections::connect);
        trials.put("silent", bodies::silent);
        trials.put("keyed", bodies::silentWithKeys);
        trials.put("keys", floods::wrongKeys);
        trials.put("bodies", bodies::bodies);
        trials.put("heads", connections::heads);
        trials.put("long", bodies::longStreams);
        trials.put("stops", new Stops(lab)::stops);
        trials.put(SOAK, connections::soak);
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Hostile hostile = new Hostile(new Lab(Path.of(arguments[0]), Path.of(arguments[1]), Integer.parseInt(arguments[2])));
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
            if (names.isEmpty() ? !each.getKey().equals(SOAK) : names.contains(each.getKey())) {
                try {
                    each.getValue().run();
                } catch (RuntimeException | IOException broken) {
                    lab.breach(true, each.getKey() + ": cannot go on: " + broken);
                }
            }
        }
        lab.close();
        System.out.printf("%d breaches in %d s%n", lab.breaches().size(), (System.nanoTime() - began) / 1_000_000_000L);
        return lab.breaches().isEmpty();
    }
}
