// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Measures the packaged service under load, beside plain servers, and prints tables. {@code src/benchmark/load} builds and starts it.
 * Arguments: jar or class path of the service, home of the Java to run it, {@code full} or {@code quick}, then the rows wanted, all by
 * default.
 */
public final class Load {

    private static final int FIRST_PORT = Integer.parseInt(System.getenv().getOrDefault("LOAD_PORT", "18700"));
    private static final String LATENCY = "latency";
    private static final String START = "start";

    private final Servers servers;
    private final Effort effort;
    private final Requests requests = new Requests();
    private final Set<String> wanted;

    private Load(Servers servers, Effort effort, List<String> wanted) throws IOException {
        this.servers = servers;
        this.effort = effort;
        Set<String> known = known();
        if (!known.containsAll(wanted)) {
            throw new IllegalArgumentException("rows are " + String.join(" ", known) + ", was " + wanted);
        }
        this.wanted = wanted.isEmpty() ? known : Set.copyOf(wanted);
    }

    public static void main(String[] arguments) throws Exception {
        Files.createDirectories(Servers.WORK);
        Servers servers = new Servers(arguments[0], Path.of(arguments[1]), FIRST_PORT);
        Effort effort = arguments[2].equals("quick") ? Effort.QUICK : Effort.FULL;
        new Load(servers, effort, List.of(arguments).subList(3, arguments.length)).run();
        System.exit(0); // some server may still have a thread here
    }

    private Set<String> known() {
        Set<String> names = new LinkedHashSet<>();
        Rows.all(requests).forEach(row -> names.add(row.name()));
        names.add(LATENCY);
        Scales.all(requests).forEach(scale -> names.add(scale.name()));
        names.add(Scales.CONNECTIONS);
        names.add(Scales.PROCESSORS);
        names.add(START);
        return names;
    }

    private void run() throws Exception {
        System.out.printf("Java %d, %d processors, keys and rates on, flags and cache of the image; processor time of the server's process"
                + " but for its compiler%n",
                servers.version(), Runtime.getRuntime().availableProcessors());
        System.out.printf("a million divisions, each waiting for the one before, take %.1f ms here%n", Table.divisionMillis());
        if (!wanted.equals(Set.of(START))) {
            underLoad();
        }
        if (wanted.contains(START)) {
            new Starts(servers, requests, effort).measure();
        }
    }

    private void underLoad() throws Exception {
        Drive drive = new Drive(servers.keys());
        try (ServerProcess service = servers.service(List.of(), servers.cache());
                ServerProcess javalin = servers.javaPeer("javalin", 1, requests);
                ServerProcess jetty = servers.javaPeer("jetty", 2, requests);
                ServerProcess go = servers.peer("go", 3, Servers.WORK.resolve("peer-go").toString());
                ServerProcess fastify = servers.peer("fastify", 4, "node", Servers.WORK.resolve("fastify/peer.mjs").toString())) {
            List<ServerProcess> stacks = List.of(service, javalin, jetty);
            List<ServerProcess> all = new ArrayList<>(stacks);
            all.addAll(List.of(go, fastify));
            new SameAnswers(requests, servers.keys().get(0)).check(service, List.of(go, fastify));
            new Warm(requests, drive, effort).answerEverything(service, stacks.subList(1, 3));
            new Rows(requests, drive, effort, wanted).compare(stacks, all);
            if (wanted.contains(LATENCY)) {
                new Latency(requests, drive, effort).measure(all);
            }
            new Scales(requests, drive, effort, wanted).measure(service);
        }
    }
}
