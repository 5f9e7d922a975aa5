// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.cost.Scales.Weighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The dearest requests that {@code .ci/cost/run} ever found keep the budget. Processor time is compared with divisions made in the
 * same process, and a request that seems too dear is weighed again, so that the machine may do other things beside.
 */
@Tag("processorTime")
class CostTest {

    private static final Scales SCALES = new Scales();
    private static final int AGAIN = 4;
    /** Where the machine does much else the deadline of calculations, kept by the clock, may end one (503). */
    private static final Set<Integer> EXPECTED = Set.of(200, 422, 503);

    static List<Trial> kept() {
        return Trial.kept();
    }

    @AfterAll
    static void stop() {
        SCALES.close();
    }

    @ParameterizedTest
    @MethodSource("kept")
    void foundRequestsStayWithinTheBudget(Trial trial) {
        assertTrue(trial.isSmallEnough());
        Weighed first = SCALES.weigh(trial);
        assertTrue(EXPECTED.contains(first.reply().status()), "answered with " + first.reply().status());
        if (Scales.share(first.cost(), Scales.divisionNanos()) > 1) {
            Cost cost = SCALES.again(trial, AGAIN);
            double share = Scales.share(cost, Scales.divisionNanos());
            assertTrue(share <= 1, () -> "takes %.2f of the budget: %s".formatted(share, cost));
        }
    }

    /** A division of 4 ns, as {@code ReferenceBenchmark} has it. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            cpuMilliseconds, allocatedMegabytes, answerMegabytes, share
            1000,            0,                  0,               0.5
            1000,            600,                0,               0.75
            1000,            600,                10,              1.25
            """)
    void whateverTakesMostOfItsBudgetCounts(long cpuMilliseconds, long allocatedMegabytes, long answerMegabytes, double share) {
        assertEquals(share, Scales.share(new Cost(cpuMilliseconds * 1_000_000, allocatedMegabytes * 1_000_000,
                answerMegabytes * 1_000_000), 4), 1e-12);
    }

    @Test
    void workOfOtherThreadsCounts() {
        List<byte[]> made = new ArrayList<>();
        Thread other = new Thread(() -> {
            IntStream.range(0, 10).forEach(i -> made.add(new byte[1_000_000]));
            synchronized (made) {
                made.notifyAll();
                try {
                    made.wait();
                } catch (InterruptedException ended) {
                    Thread.currentThread().interrupt();
                }
            }
        });
        Cost cost = Cost.of(() -> {
            synchronized (made) {
                other.start();
                try {
                    while (made.size() < 10) {
                        made.wait();
                    }
                } catch (InterruptedException ended) {
                    Thread.currentThread().interrupt();
                }
            }
        });
        other.interrupt();
        assertTrue(cost.allocatedBytes() >= 10_000_000, cost.toString());
        assertTrue(cost.cpuNanos() > 0, cost.toString());
    }
}
