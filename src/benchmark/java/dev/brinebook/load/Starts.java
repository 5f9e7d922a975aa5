// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;

/** Starts of the packaged service from the cache of a training run, on one processor, and the memory that it keeps. */
final class Starts {

    private static final List<String> ONE_PROCESSOR = List.of("taskset", "-c", "0");
    private static final int FIRST_REQUESTS = 10_000;
    private static final int CONNECTIONS = 8;
    /** The operations that are asked in turn: mostly quick ones, a tenth assessments. */
    private static final List<String> MIX = List.of("compensateHardness", "convertHardness", "compensateHardness", "estimatePeakFlow",
            "compensateHardness", "blendHardness", "convertHardness", "assess", "designCycle", "compensateHardness");

    private final Servers servers;
    private final Requests requests;
    private final Effort effort;
    private final Drive drive;

    Starts(Servers servers, Requests requests, Effort effort) {
        this.servers = servers;
        this.requests = requests;
        this.effort = effort;
        this.drive = new Drive(servers.keys());
    }

    void measure() throws IOException, InterruptedException {
        List<String> cache = servers.cache();
        Map<String, double[]> firsts = new LinkedHashMap<>();
        double[] ready = new double[effort.rounds()];
        double[] seconds = new double[effort.rounds()];
        for (int round = 0; round < effort.rounds(); round++) {
            try (ServerProcess service = servers.service(ONE_PROCESSOR, cache)) {
                ready[round] = service.readySeconds() * 1e3;
                seconds[round] = service.processorSeconds();
                first(service, round, firsts);
            }
        }
        Table.heading("Start on one processor" + (cache.isEmpty() ? ", without a cache" : " from the cache"), "what", "median");
        Table.row(List.of("ready after, ms", Table.number(Table.median(ready))));
        Table.row(List.of("processor time until then, s", Table.number(Table.median(seconds))));
        Map<String, Double> medians = firsts.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, first ->
                Table.median(first.getValue()), (a, b) -> a, LinkedHashMap::new));
        Table.row(List.of("first answers of the " + medians.size() + " operations, ms: median", Table.number(Table.median(medians.values()
                .stream().mapToDouble(Double::doubleValue).toArray()))));
        Table.row(List.of("first answers one by one, ms", medians.entrySet().stream().map(first -> first.getKey() + " "
                + Table.number(first.getValue())).collect(Collectors.joining(", "))));
        mixed(cache);
    }

    /** Milliseconds of the first answer of each operation, each on a connection of its own. */
    private void first(ServerProcess service, int round, Map<String, double[]> firsts) throws IOException {
        for (String operation : requests.operations()) {
            List<Message> examples = requests.examples(operation);
            if (!examples.isEmpty()) {
                try (Connection connection = new Connection(service.port(), servers.keys().get(0))) {
                    long began = System.nanoTime();
                    connection.exchange(examples.get(examples.size() - 1));
                    firsts.computeIfAbsent(operation, id -> new double[effort.rounds()])[round] = (System.nanoTime() - began) / 1e6;
                }
            }
        }
    }

    private void mixed(List<String> cache) throws IOException, InterruptedException {
        try (ServerProcess service = servers.service(List.of(), cache)) {
            drive.closed(service, mix(FIRST_REQUESTS, 1), CONNECTIONS);
            Table.row(List.of("processor time of start and first 10,000 mixed requests, s", Table.number(service.processorSeconds())));
            for (int sent = FIRST_REQUESTS; sent < effort.mixed(); sent += FIRST_REQUESTS) {
                drive.closed(service, mix(FIRST_REQUESTS, sent), CONNECTIONS);
            }
            Table.row(List.of(String.format("anonymous memory after %,d mixed requests, MiB", effort.mixed()),
                    Table.number(service.anonymousMebibytes())));
        }
    }

    /** Requests of a district with twenty waters and households of every size. */
    private List<Message> mix(int count, long seed) {
        Random random = new Random(seed);
        List<Message> messages = new ArrayList<>();
        Map<String, ObjectNode> examples = MIX.stream().distinct().collect(Collectors.toMap(
                operation -> operation,
                operation -> Requests.example(operation, operation.equals("convertHardness") ? "us" : "well-family")));
        for (int i = 0; i < count; i++) {
            String operation = MIX.get(i % MIX.size());
            ObjectNode request = examples.get(operation);
            if (request.has("water") || request.has("hardness")) {
                Requests.districtWater(request, random);
            }
            Requests.newHousehold(request, random);
            messages.add(requests.message(operation, request));
        }
        return messages;
    }
}
