// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How the cost grows with what there is to do: a few sizes of each kind, and the exponent of the power that fits them best. */
final class Scales {

    static final String CONNECTIONS = "connections";
    static final String PROCESSORS = "processors";
    private static final int[] CALLERS = {1, 2, 4, 16, 64, 256};
    private static final int FEWEST = 2;
    private static final int MOST = 2_000;
    private static final String HALF = "half";
    private static final Path GROUP = Path.of("/sys/fs/cgroup/cpu/load-suite");

    private final Requests requests;
    private final Drive drive;
    private final Effort effort;
    private final Set<String> wanted;

    Scales(Requests requests, Drive drive, Effort effort, Set<String> wanted) {
        this.requests = requests;
        this.drive = drive;
        this.effort = effort;
        this.wanted = wanted;
    }

    /** Draws a request of a size. */
    @FunctionalInterface
    interface Sized {
        Message draw(int size, Random random);
    }

    /** A kind of size. */
    record Scale(String name, String text, int[] sizes, Sized sized) {
    }

    static List<Scale> all(Requests requests) {
        return List.of(
                new Scale("rows", "lines of a list, numbers alone", new int[] {10, 100, 1_000, 10_000}, (size, random) ->
                        Bulk.ndjson(requests, size, random.nextLong())),
                new Scale("candidates", "candidates of a sizing", new int[] {1, 5, 25, 100, 250}, (size, random) ->
                        requests.message("sizeSoftener", sizing(size, 0, random))),
                new Scale("days", "days of a series, sizing of one candidate", new int[] {30, 183, 365, 730, 1_095}, (size, random) ->
                        requests.message("sizeSoftener", sizing(1, size, random))),
                new Scale("simulated-years", "simulated years of a schedule", new int[] {10, 50, 200, 1_000, 2_000}, (size, random) -> {
                    ObjectNode request = Requests.example("scheduleRegeneration", "well-family");
                    Requests.newHousehold(request, random);
                    return requests.message("scheduleRegeneration", years(request, size));
                }),
                new Scale("uncertain-draws", "draws of a comparison of alternatives", new int[] {1_000, 2_000, 5_000, 10_000},
                        (size, random) -> {
                            ObjectNode request = Requests.example("compareAlternatives", "well-family");
                            Requests.newHousehold(request, random);
                            request.withObject("/uncertainty").put("draws", size);
                            return requests.message("compareAlternatives", request);
                        }),
                new Scale("fixtures", "fixtures of a house", new int[] {10, 50, 200, 1_000}, (size, random) ->
                        requests.message("estimatePeakFlow", fixtures(size, random))));
    }

    /** One policy, that of a delayed meter, over as many simulated years. */
    static ObjectNode years(ObjectNode request, int years) {
        ArrayNode policies = request.putArray("policies");
        policies.addObject().put("name", "metered").putObject("control").put("kind", "meteredDelayed");
        return request.put("years", years);
    }

    private static ObjectNode sizing(int candidates, int days, Random random) {
        ObjectNode request = Requests.JSON.createObjectNode();
        Requests.setHardness(request.putObject("water").putObject("hardness").put("unit", "gpg"), 100 + 400 * random.nextDouble(), 3);
        ObjectNode household = request.putObject("household");
        if (days == 0) {
            household.put("people", 1 + random.nextInt(8));
        } else {
            ArrayNode values = household.putObject("dailySeries").put("firstDate", "2023-01-01").put("unit", "L").putArray("values");
            IntStream.range(0, days).forEach(day -> values.add(500 + random.nextInt(1_000)));
        }
        ArrayNode all = request.putArray("candidates");
        IntStream.range(0, candidates).forEach(number -> all.addObject().put("sku", "invented-" + number).putObject("resinVolume")
                .put("value", 20 + number % 60).put("unit", "L"));
        return request;
    }

    private static ObjectNode fixtures(int count, Random random) {
        ObjectNode request = Requests.JSON.createObjectNode();
        ArrayNode kinds = request.putArray("fixtures");
        for (String kind : List.of("shower", "lavatory", "waterClosetTank", "kitchenSink", "clothesWasher")) {
            ObjectNode flow = kinds.addObject().put("kind", kind).put("count", count / 5).putObject("flow").put("unit", "L/min");
            Requests.put(flow, 5 + 7 * random.nextDouble(), 1);
        }
        return request;
    }

    /** Prints those wanted. */
    void measure(ServerProcess service) throws IOException, InterruptedException {
        List<Scale> scales = all(requests).stream().filter(scale -> wanted.contains(scale.name())).toList();
        if (!scales.isEmpty() || wanted.contains(CONNECTIONS)) {
            Table.heading("Processor time by size", "row", "of what", "sizes", "ms each", "exponent");
        }
        for (Scale scale : scales) {
            int[] sizes = scale.sizes();
            cost(service, scale, sizes[sizes.length / 2]); // not shown: so that the first is as warm as the last
            double[] millis = new double[sizes.length];
            for (int i = 0; i < millis.length; i++) {
                millis[i] = cost(service, scale, sizes[i]) / 1e3;
            }
            print(scale.name(), scale.text(), sizes, millis);
        }
        if (wanted.contains(CONNECTIONS)) {
            byConnections(service);
        }
        if (wanted.contains(PROCESSORS)) {
            byProcessors(service);
        }
    }

    /** Microseconds of a request of a size: of as many as take the time of a turn. */
    private double cost(ServerProcess service, Scale scale, int size) throws IOException {
        Random random = new Random(size);
        int count = FEWEST;
        double micros = 0;
        for (double spent = 0; spent < effort.processorSeconds() / 2 && count <= MOST * 4; count *= 4) {
            List<Message> messages = IntStream.range(0, count).mapToObj(number -> scale.sized().draw(size, random)).toList();
            micros = drive.closed(service, messages, 2).processorMicros();
            spent = micros * count / 1e6;
        }
        return micros;
    }

    private void byConnections(ServerProcess service) throws IOException {
        List<Message> messages = requests.drawn(Bulk.OPERATION, "well-family", MOST * 4, 3, Bulk::water);
        double[] millis = new double[CALLERS.length];
        for (int i = 0; i < CALLERS.length; i++) {
            millis[i] = drive.closed(service, messages, CALLERS[i]).processorMicros() / 1e3;
        }
        print(CONNECTIONS, "connections, each request a compensated hardness", CALLERS, millis);
    }

    /** Answers a second of the service kept on fewer processors; those of callers are the same, so two are not twice one. */
    private void byProcessors(ServerProcess service) throws IOException, InterruptedException {
        List<String> names = new ArrayList<>();
        List<Double> processors = new ArrayList<>();
        List<Double> perSecond = new ArrayList<>();
        if (Files.isWritable(GROUP.getParent())) {
            Files.createDirectories(GROUP);
            Files.writeString(GROUP.resolve("cpu.cfs_quota_us"), "50000");
            Files.writeString(GROUP.resolve("cgroup.procs"), "" + service.pid());
            add(HALF, 0.5, service, names, processors, perSecond);
            Files.writeString(GROUP.getParent().resolve("cgroup.procs"), "" + service.pid());
            Files.delete(GROUP);
        }
        keepOn("0", service);
        add("1", 1, service, names, processors, perSecond);
        keepOn("0-1", service);
        add("2", 2, service, names, processors, perSecond);
        Table.heading("Answers a second by processors, compensated hardness" + (names.contains(HALF) ? ""
                : " (no half: it needs a writable control group of processor time)"), "row", "processors", "answers/s", "exponent");
        double[] rates = perSecond.stream().mapToDouble(Double::doubleValue).toArray();
        Table.row(List.of(PROCESSORS, String.join("; ", names),
                Arrays.stream(rates).mapToObj(Table::number).collect(Collectors.joining("; ")),
                Table.number(Table.exponent(processors.stream().mapToDouble(Double::doubleValue).toArray(), rates))));
    }

    private void add(String name, double size, ServerProcess service, List<String> names, List<Double> sizes, List<Double> rates)
            throws IOException {
        List<Message> messages = requests.drawn(Bulk.OPERATION, "well-family", MOST * 4, 4, Bulk::water);
        names.add(name);
        sizes.add(size);
        rates.add(drive.closed(service, messages, Comparison.CONNECTIONS).perSecond());
    }

    private static void keepOn(String processors, ServerProcess service) throws IOException, InterruptedException {
        new ProcessBuilder("taskset", "-a", "-c", "-p", processors, "" + service.pid()).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
    }

    private static void print(String name, String text, int[] sizes, double[] costs) {
        Table.row(List.of(name, text, Arrays.stream(sizes).mapToObj("%,d"::formatted).collect(Collectors.joining("; ")),
                Arrays.stream(costs).mapToObj(Table::number).collect(Collectors.joining("; ")),
                Table.number(Table.exponent(Arrays.stream(sizes).asDoubleStream().toArray(), costs))));
    }
}
