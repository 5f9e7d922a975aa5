// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import dev.brinebook.fuzz.Call;
import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.http.server.InMemory;
import dev.brinebook.http.server.InMemory.Reply;
import dev.brinebook.request.softener.BedCapacityCache;
import java.util.Arrays;

/**
 * Weighs requests that the whole service answers in this process, and holds them to a budget.
 *
 * <p>Processor time is counted in divisions, each waiting for the one before: how many this machine could have made meanwhile. So
 * the budget is the same on a slow machine, and on one that others use too.
 */
final class Scales implements AutoCloseable {

    /**
     * Two seconds where a million divisions take 4 ms: a fifth of what a calculation may take by default
     * (CALCULATION_MILLISECONDS), so that whatever is allowed is still answered by a processor five times slower, or shared by
     * five. {@code regeneration.Effort} aims at half of it.
     */
    static final double MOST_DIVISIONS = 500e6;
    /** What a processor collects again within that time without falling behind; most lives for microseconds. */
    static final long MOST_ALLOCATED_BYTES = 800_000_000;
    /** An answer is held two or three times while it is written: of a heap of 96 MB that is a quarter. */
    static final long MOST_ANSWER_BYTES = 8_000_000;

    private static final int DIVISIONS = 1_000_000;
    private static final int ROUNDS = 9;
    private static double divided = 1;

    private final InMemory service = new InMemory();

    /** What came back, and what it took. */
    record Weighed(Reply reply, Cost cost) {
    }

    /** Processor time of a division now, the median of some rounds. */
    static double divisionNanos() {
        double[] nanos = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            nanos[i] = (double) Cost.of(Scales::divide).cpuNanos() / DIVISIONS;
        }
        Arrays.sort(nanos);
        return nanos[ROUNDS / 2];
    }

    private static void divide() {
        double value = divided;
        for (int i = 0; i < DIVISIONS; i++) {
            value = 1.7 / value + i;
        }
        divided = value;
    }

    /** A request when nothing is remembered of those before it. */
    Weighed weigh(Trial trial) {
        Call call = trial.call();
        BedCapacityCache.clear();
        WorkingMemory.clear();
        Reply[] reply = new Reply[1];
        Cost cost = Cost.of(() -> reply[0] = service.ask(call.head(), call.body()));
        return new Weighed(reply[0], cost.answering(trial.route().isStreamed() ? 0 : reply[0].body().length));
    }

    /** The least of several times: what is compiled or collected meanwhile costs once. */
    Cost again(Trial trial, int times) {
        Cost least = weigh(trial).cost();
        for (int i = 1; i < times; i++) {
            least = least.least(weigh(trial).cost());
        }
        return least;
    }

    /** The part of the budget that a cost takes, of time, memory or length whichever is most; above 1 it is too dear. */
    static double share(Cost cost, double divisionNanos) {
        return Math.max(cost.cpuNanos() / divisionNanos / MOST_DIVISIONS, Math.max(
                (double) cost.allocatedBytes() / MOST_ALLOCATED_BYTES, (double) cost.answerBytes() / MOST_ANSWER_BYTES));
    }

    @Override
    public void close() {
        service.close();
    }
}
