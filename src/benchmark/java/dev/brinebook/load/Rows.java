// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.load.Comparison.Costs;
import dev.brinebook.load.Comparison.Load;
import dev.brinebook.load.Comparison.Turn;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** The rows of the table of costs: processor time of the service for an answer, and its ratio to each peer in the same rounds. */
final class Rows {

    private static final String WELL = "well-family";
    private static final int LINES = 1_000;

    private final Requests requests;
    private final Comparison comparison;
    private final Set<String> wanted;

    Rows(Requests requests, Drive drive, Effort effort, Set<String> wanted) {
        this.requests = requests;
        this.comparison = new Comparison(drive, effort);
        this.wanted = wanted;
    }

    /**
     * A row.
     *
     * @param text what is asked
     * @param load what is sent to the service
     * @param lines answers to a request
     * @param same whether the plain servers that calculate answer it too
     * @param peers what is sent to the peers
     */
    record Row(String name, String text, Load load, int lines, boolean same, Load peers) {

        static Row of(Requests requests, String name, String text, String operation, boolean same,
                BiConsumer<ObjectNode, Random> change) {
            Load load = (count, seed) -> requests.drawn(operation, operation.equals("convertHardness") ? "us" : WELL, count,
                    count * 31L + seed, change);
            return new Row(name, text, load, 1, same, load);
        }
    }

    static List<Row> all(Requests requests) {
        Load single = (count, seed) -> requests.drawn(Bulk.OPERATION, WELL, count, seed, Bulk::water);
        return List.of(
                Row.of(requests, "convert", "hardness conversion", "convertHardness", true, (request, random) ->
                        Requests.setHardness(request.withObject("/hardness"), 10 + 600 * random.nextDouble(), 1)),
                Row.of(requests, "compensate", "compensated hardness", Bulk.OPERATION, true, Bulk::water),
                Row.of(requests, "assess-new", "assessment, each water new", "assess", false, Requests::newWater),
                Row.of(requests, "assess-same", "assessment, same water and softener, households drawn", "assess", false,
                        Requests::newHousehold),
                Row.of(requests, "size-new", "sizing among the standard tanks, each water new", "sizeSoftener", false,
                        (request, random) -> {
                            request.remove("candidates");
                            Requests.newWater(request, random);
                        }),
                Row.of(requests, "reserve", "reserve choice, each water new", "chooseReserve", false, Requests::newWater),
                Row.of(requests, "years", "schedule over 2,000 simulated years, delayed meter, households drawn",
                        "scheduleRegeneration", false, (request, random) -> {
                            Scales.years(request, 2_000);
                            Requests.newHousehold(request, random);
                        }),
                Row.of(requests, "draws", "alternatives with 10,000 draws, households drawn", "compareAlternatives", false,
                        (request, random) -> {
                            request.withObject("/uncertainty").put("draws", 10_000);
                            Requests.newHousehold(request, random);
                        }),
                new Row("ndjson", "line of a list, compensated hardness, numbers alone", (count, seed) -> lists(count, number ->
                        Bulk.ndjson(requests, LINES, seed + number)), LINES, false, single),
                new Row("csv", "row of a table, compensated hardness, numbers alone", (count, seed) -> lists(count, number ->
                        Bulk.csv(LINES, seed + number)), LINES, false, single),
                new Row("agent", "compensated hardness by the tool of agents", (count, seed) -> Bulk.agent(requests, count, seed), 1,
                        false, single));
    }

    private static List<Message> lists(int count, IntFunction<Message> list) {
        List<Message> some = IntStream.range(0, Math.min(count, 10)).mapToObj(list).toList();
        return IntStream.range(0, count).mapToObj(number -> some.get(number % some.size())).toList();
    }

    /** Prints the rows wanted. The first of the servers is the service. */
    void compare(List<ServerProcess> stacks, List<ServerProcess> all) throws IOException {
        List<Row> rows = all(requests).stream().filter(row -> wanted.contains(row.name())).toList();
        if (rows.isEmpty()) {
            return;
        }
        List<String> columns = new ArrayList<>(List.of("row", "answer", "µs each", "answers/s"));
        all.stream().skip(1).forEach(peer -> columns.add("to " + peer.name()));
        Table.heading("Processor time for an answer, and its ratio to that of a peer for an answer (medians of "
                + "interleaved rounds)", columns.toArray(String[]::new));
        for (Row row : rows) {
            List<ServerProcess> servers = row.same() ? all : stacks;
            Map<String, Costs> costs = comparison.of(servers.stream().map(server -> server == all.get(0)
                    ? new Turn(server, row.load(), row.lines()) : new Turn(server, row.peers(), 1)).toList());
            Costs own = costs.get(all.get(0).name());
            List<String> cells = new ArrayList<>(List.of(row.name(), row.text(), Table.number(Table.median(own.processorMicros())),
                    Table.number(Table.median(own.perSecond()))));
            all.stream().skip(1).forEach(peer -> cells.add(!servers.contains(peer) ? ""
                    : Table.number(Table.ratio(own.processorMicros(), costs.get(peer.name()).processorMicros()))));
            Table.row(cells);
        }
    }
}
