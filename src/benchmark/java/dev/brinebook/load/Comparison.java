// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Servers that take turns with the same requests: round after round, beginning with another one each time. */
final class Comparison {

    static final int CONNECTIONS = 8;
    private static final int FEWEST = 4;
    private static final int MOST = 20_000;
    private static final double LONG_MICROS = 20_000;
    /** Share of the compiler in the processor time of a server that is warm. */
    private static final double SETTLED = 0.1;

    private final Drive drive;
    private final Effort effort;

    Comparison(Drive drive, Effort effort) {
        this.drive = drive;
        this.effort = effort;
    }

    /** Draws as many requests, by a seed; the same for every server. */
    @FunctionalInterface
    interface Load {
        List<Message> draw(int count, long seed) throws IOException;
    }

    /**
     * What a server is sent.
     *
     * @param lines answers to each request, more than one in a list
     */
    record Turn(ServerProcess server, Load load, int lines) {
    }

    /**
     * Of each turn and round.
     *
     * @param processorMicros processor time of an answer
     * @param perSecond answers a second
     */
    record Costs(double[] processorMicros, double[] perSecond) {
    }

    /** Costs of each of some servers with the same load. */
    Map<String, Costs> of(Load load, List<ServerProcess> servers) throws IOException {
        return of(servers.stream().map(server -> new Turn(server, load, 1)).toList());
    }

    Map<String, Costs> of(List<Turn> turns) throws IOException {
        int[] counts = new int[turns.size()];
        Map<String, Costs> costs = new LinkedHashMap<>();
        for (int turn = 0; turn < counts.length; turn++) {
            counts[turn] = count(turns.get(turn));
            costs.put(turns.get(turn).server().name(), new Costs(new double[effort.rounds()], new double[effort.rounds()]));
        }
        for (int round = 0; round < effort.rounds(); round++) {
            for (int i = 0; i < counts.length; i++) {
                int which = (i + round) % counts.length;
                Turn turn = turns.get(which);
                Drive.Cost cost = drive.closed(turn.server(), turn.load().draw(counts[which], 1_000L + round),
                        counts[which] < effort.processorSeconds() * 1e6 / LONG_MICROS ? 2 : CONNECTIONS);
                Costs all = costs.get(turn.server().name());
                all.processorMicros()[round] = cost.processorMicros() / turn.lines();
                all.perSecond()[round] = cost.perSecond() * turn.lines();
            }
        }
        return costs;
    }

    /**
     * As many requests as take about the processor time of a turn. Before, the server answers such requests until its compiler has
     * little left to do, or as long as is allowed.
     */
    private int count(Turn turn) throws IOException {
        ServerProcess server = turn.server();
        double micros = 0;
        int some = FEWEST;
        double began = server.processorSeconds();
        for (double compiling = 1; compiling > SETTLED && server.processorSeconds() - began < effort.rowSeconds();) {
            double before = server.processorSeconds();
            double answering = server.answeringSeconds();
            micros = drive.closed(server, turn.load().draw(some, some), connections(micros)).processorMicros();
            double spent = server.processorSeconds() - before;
            compiling = spent < effort.processorSeconds() / 2 ? 1 : 1 - (server.answeringSeconds() - answering) / spent;
            some = spent < effort.processorSeconds() && some < MOST ? some * 2 : some;
        }
        return (int) Math.max(Math.min(effort.processorSeconds() * 1e6 / Math.max(micros, 1), MOST), FEWEST);
    }

    /** Long calculations wait for each other, not for more callers; at first it is not known how long they are. */
    private static int connections(double micros) {
        return micros > 0 && micros < LONG_MICROS ? CONNECTIONS : 2;
    }
}
