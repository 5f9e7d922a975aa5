// SPDX-License-Identifier: Apache-2.0
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What became of the requests of some callers. */
final class Tally {

    private static final int REFUSED = 503;
    private static final int TOO_MANY = 429;
    private static final int MOST_KEPT = 5;
    private static final int MOST_TEXT = 200;

    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final List<String> strange = new ArrayList<>();
    private long[] nanos = new long[1 << 10];
    private int times;
    private int cutOff;
    private int withoutRetry;

    /** An answer that came so long after its request was due, or was sent. */
    synchronized void answer(Answer answer, long tookNanos) {
        statuses.merge(answer.status(), 1, Integer::sum);
        if (times == nanos.length) {
            nanos = Arrays.copyOf(nanos, 2 * times);
        }
        nanos[times++] = tookNanos;
        boolean refused = answer.status() == REFUSED || answer.status() == TOO_MANY;
        if (refused && !answer.saysWhenToRetry()) {
            withoutRetry++;
        }
        if (answer.status() >= 500 && answer.status() != REFUSED) {
            strange(answer.status() + " " + answer.text());
        }
    }

    /** A request that was begun and got no whole answer. */
    synchronized void cutOff() {
        cutOff++;
    }

    synchronized void strange(String what) {
        if (strange.size() < MOST_KEPT) {
            strange.add(what.substring(0, Math.min(MOST_TEXT, what.length())));
        }
    }

    synchronized void add(Tally other) {
        other.statuses.forEach((status, count) -> statuses.merge(status, count, Integer::sum));
        strange.addAll(other.strange);
        cutOff += other.cutOff;
        withoutRetry += other.withoutRetry;
    }

    synchronized int of(int status) {
        return statuses.getOrDefault(status, 0);
    }

    synchronized int answers() {
        return statuses.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Answers other than "come back later". */
    synchronized int served() {
        return answers() - of(REFUSED) - of(TOO_MANY);
    }

    synchronized int cutOffs() {
        return cutOff;
    }

    synchronized int refusalsWithoutRetry() {
        return withoutRetry;
    }

    synchronized List<String> strangeAnswers() {
        return List.copyOf(strange);
    }

    /** Milliseconds within which 99 % were answered. */
    synchronized double p99Millis() {
        long[] sorted = Arrays.copyOf(nanos, times);
        Arrays.sort(sorted);
        return times == 0 ? 0 : sorted[(int) Math.ceil(0.99 * times) - 1] / 1e6;
    }

    @Override
    public synchronized String toString() {
        return statuses.isEmpty() ? "none" : statuses.entrySet().stream().map(each -> each.getValue() + "x" + each.getKey())
                .collect(Collectors.joining(" "));
    }
}
