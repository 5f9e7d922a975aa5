// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;

/**
 * A well-behaved caller: asks at an even rate whatever the answers do, keeps few connections, and takes a new one now and then.
 * A time counts from when the request was due.
 */
final class GoodCaller {

    private static final int PER_SECOND = 20;
    private static final int CONNECTIONS = 4;
    private static final int CALLS_EACH = 10;
    private static final long SECOND = 1_000_000_000L;
    private static final long LAST_ANSWERS_NANOS = 10 * SECOND;

    private final int port;
    private final String from;
    private final Supplier<byte[]> requests;

    GoodCaller(int port, String from, Supplier<byte[]> requests) {
        this.port = port;
        this.from = from;
        this.requests = requests;
    }

    /**
     * How some seconds went.
     *
     * @param ownDelayMillis how much later than it wanted the caller's own machine woke it, within which 99 % were: no
     *     service is faster for a caller that does not run
     */
    record Window(Tally tally, double ownDelayMillis) {
    }

    /** Asks as fast as answers come, from as many connections, until the machine code is made. */
    void warmUp(double seconds) throws IOException {
        Tally tally = new Tally();
        try (Wire wire = new Wire(port)) {
            for (int each = 0; each < CONNECTIONS; each++) {
                wire.open(from, new Scripts.Repeating(requests, tally, Integer.MAX_VALUE, 0));
            }
            for (long end = System.nanoTime() + (long) (seconds * SECOND); System.nanoTime() < end;) {
                wire.move(1);
            }
        }
    }

    /** Asks for some seconds and waits for the last answers. */
    Window ask(double seconds) throws IOException {
        Tally tally = new Tally();
        OwnDelay delay = new OwnDelay();
        delay.start();
        try (Wire wire = new Wire(port)) {
            ArrayDeque<Long> due = new ArrayDeque<>();
            List<Calls> all = new ArrayList<>();
            long began = System.nanoTime();
            long end = began + (long) (seconds * SECOND);
            for (long asked = 0;;) {
                long now = System.nanoTime();
                for (; now < end && asked < (now - began) / 1e9 * PER_SECOND; asked++) {
                    due.add(began + asked * SECOND / PER_SECOND);
                }
                all.removeIf(Calls::isOver);
                while (!due.isEmpty() && take(due.peek(), all, wire, tally)) {
                    due.poll();
                }
                boolean busy = !due.isEmpty() || all.stream().anyMatch(calls -> calls.due != 0);
                if (now > end && !busy || now > end + LAST_ANSWERS_NANOS) {
                    break;
                }
                wire.move(1);
            }
            due.forEach(never -> tally.cutOff());
            all.stream().filter(calls -> calls.due != 0).forEach(never -> tally.cutOff());
        }
        return new Window(tally, delay.end());
    }

    private boolean take(long due, List<Calls> all, Wire wire, Tally tally) {
        for (Calls calls : List.copyOf(all)) {
            if (calls.begin(due)) {
                return true;
            }
        }
        all.removeIf(Calls::isOver);
        if (all.size() == CONNECTIONS) {
            return false;
        }
        Calls calls = new Calls(due, tally);
        all.add(calls);
        calls.peer = wire.open(from, calls);
        return true;
    }

    /** The calls on one connection. */
    private final class Calls implements Wire.Script {

        private final Tally tally;
        private Wire.Peer peer;
        private long due;
        private int left = CALLS_EACH;
        private boolean over;

        Calls(long due, Tally tally) {
            this.due = due;
            this.tally = tally;
        }

        boolean isOver() {
            return over;
        }

        boolean begin(long from) {
            if (due != 0 || over || !peer.isStillOpen()) {
                return false;
            }
            due = from;
            peer.send(requests.get());
            return true;
        }

        @Override
        public void opened(Wire.Peer opened) {
            opened.send(requests.get());
        }

        @Override
        public void answered(Wire.Peer answering, Answer answer) {
            tally.answer(answer, System.nanoTime() - due);
            if (answer.status() != 200) {
                tally.strange(answer.status() + " " + answer.text());
            }
            due = 0;
            left--;
            if (answer.closes() || left == 0) {
                over = true;
                answering.end();
            }
        }

        @Override
        public void closed(Wire.Peer closing) {
            over = true;
            if (due != 0) {
                due = 0;
                tally.cutOff();
            }
            closing.end();
        }
    }

    /** Sleeps a millisecond again and again and looks how long it was. */
    private static final class OwnDelay extends Thread {

        private static final long SLEEP_NANOS = 1_000_000L;

        private final long[] late = new long[60_000];
        private int count;
        private volatile boolean ends;

        OwnDelay() {
            setDaemon(true);
        }

        @Override
        public void run() {
            while (!ends && count < late.length) {
                long began = System.nanoTime();
                LockSupport.parkNanos(SLEEP_NANOS);
                late[count++] = Math.max(0, System.nanoTime() - began - SLEEP_NANOS);
            }
        }

        double end() {
            ends = true;
            try {
                join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            long[] sorted = Arrays.copyOf(late, count);
            Arrays.sort(sorted);
            return count == 0 ? 0 : sorted[(int) Math.ceil(0.99 * count) - 1] / 1e6;
        }
    }
}
