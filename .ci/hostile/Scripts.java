// SPDX-License-Identifier: Apache-2.0
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** What callers do on a connection. */
final class Scripts {

    private static final long SECOND = 1_000_000_000L;
    private static final int DRIP_SECONDS = 20;

    private Scripts() {
    }

    /**
     * Sends a request as soon as the last is answered and a pause is over, on a new connection where the service closes.
     * Whoever is refused waits a tenth of a second: what a network carries to the service is not its own to limit.
     */
    static final class Repeating implements Wire.Script {

        private static final long AFTER_REFUSAL_NANOS = SECOND / 10;

        private final Supplier<byte[]> requests;
        private final Tally tally;
        private final long pauseNanos;
        private int left;
        private boolean connectsAgain = true;
        private volatile boolean waits;
        private volatile boolean connects = true;
        private long sent;
        private long next;
        private volatile int answers;
        private volatile int served;

        /** At most this number of calls, with a pause between them. */
        Repeating(Supplier<byte[]> requests, Tally tally, int calls, double pauseSeconds) {
            this.requests = requests;
            this.tally = tally;
            this.left = calls;
            this.pauseNanos = (long) (pauseSeconds * SECOND);
        }

        /** Sends no more; what is sent may still be answered. */
        void finish() {
            left = 0;
            connectsAgain = false;
        }

        /** Sends on, as long as the connection lasts. */
        void connectNoMore() {
            connectsAgain = false;
        }

        boolean isWaiting() {
            return waits;
        }

        /** Whether it connects, or is connected and has had no answer yet: the service may not have taken the connection. */
        boolean isConnecting() {
            return connects;
        }

        int answers() {
            return answers;
        }

        /** Answers of 200. */
        int served() {
            return served;
        }

        @Override
        public void opened(Wire.Peer peer) {
            send(peer);
        }

        private void send(Wire.Peer peer) {
            if (left > 0 && peer.isStillOpen()) {
                sent = System.nanoTime();
                waits = true;
                left--;
                peer.send(requests.get());
            }
        }

        @Override
        public void answered(Wire.Peer peer, Answer answer) {
            long now = System.nanoTime();
            waits = false;
            connects = false;
            answers++;
            served += answer.status() == 200 ? 1 : 0;
            tally.answer(answer, now - sent);
            boolean refused = answer.status() == 503 || answer.status() == 429;
            next = now + Math.max(pauseNanos, refused ? AFTER_REFUSAL_NANOS : 0);
            if (answer.closes()) {
                peer.disconnect();
            } else if (next <= now) {
                send(peer);
            }
        }

        @Override
        public void closed(Wire.Peer peer) {
            next = System.nanoTime() + AFTER_REFUSAL_NANOS;
            connects = false;
            if (waits) {
                waits = false;
                tally.cutOff();
            }
        }

        @Override
        public void pass(Wire.Peer peer, long now) {
            if (waits || left == 0 || now < next) {
                return;
            }
            if (peer.isOpen()) {
                send(peer);
            } else if (connectsAgain && !peer.isConnecting()) {
                connects = true;
                peer.connect();
            }
        }
    }

    /**
     * A part of what is sent.
     *
     * @param atSeconds when, from the start of the request
     */
    record Part(double atSeconds, byte[] bytes) {
    }

    /** A start, and then a byte after each pause for longer than any request may take. */
    static List<Part> dripping(String start, double pauseSeconds) {
        List<Part> parts = new ArrayList<>(List.of(new Part(0, Requests.bytes(start))));
        for (int each = 1; each * pauseSeconds < DRIP_SECONDS; each++) {
            parts.add(new Part(each * pauseSeconds, Requests.bytes("a")));
        }
        return parts;
    }

    /** Sends one request in parts, at their times, and waits for its answer; before it another whole one, if there is one. */
    static final class InParts implements Wire.Script {

        private final byte[] before;
        private final List<Part> parts;
        private final Tally tally;
        private boolean started;
        private volatile boolean ended;
        private long start;
        private int sentParts;
        private volatile Answer answer;
        private volatile double seconds;

        InParts(byte[] before, List<Part> parts, Tally tally) {
            this.before = before;
            this.parts = parts;
            this.tally = tally;
        }

        /** The answer to the request in parts, or null when there was none. */
        Answer answer() {
            return answer;
        }

        /** Whether it is answered, or closed by the service. */
        boolean hasEnded() {
            return ended;
        }

        /** Seconds from the first byte to the end. */
        double seconds() {
            return seconds;
        }

        @Override
        public void opened(Wire.Peer peer) {
            if (before == null) {
                start(peer);
            } else {
                peer.send(before);
            }
        }

        private void start(Wire.Peer peer) {
            started = true;
            start = System.nanoTime();
            pass(peer, start);
        }

        @Override
        public void answered(Wire.Peer peer, Answer came) {
            if (!started) {
                start(peer);
                return;
            }
            answer = came;
            end();
            tally.answer(came, System.nanoTime() - start);
            peer.end();
        }

        @Override
        public void closed(Wire.Peer peer) {
            if (!ended) {
                end();
                tally.cutOff();
            }
            peer.end();
        }

        private void end() {
            ended = true;
            seconds = (System.nanoTime() - start) / 1e9;
        }

        @Override
        public void pass(Wire.Peer peer, long now) {
            while (started && !ended && sentParts < parts.size()
                    && now - start >= parts.get(sentParts).atSeconds() * SECOND) {
                sentParts++;
                peer.send(parts.get(sentParts - 1).bytes());
            }
        }
    }

    /** Sends one request and leaves it to the service to close the connection. */
    static final class UntilClosed implements Wire.Script {

        private final byte[] request;
        private final Tally tally;
        private boolean answered;
        private volatile boolean closed;

        UntilClosed(byte[] request, Tally tally) {
            this.request = request;
            this.tally = tally;
        }

        boolean isClosed() {
            return closed;
        }

        @Override
        public void opened(Wire.Peer peer) {
            peer.send(request);
        }

        @Override
        public void answered(Wire.Peer peer, Answer answer) {
            answered = true;
            tally.answer(answer, 0);
        }

        @Override
        public void closed(Wire.Peer peer) {
            closed = true;
            if (!answered) {
                tally.cutOff();
            }
            peer.end();
        }
    }
}
