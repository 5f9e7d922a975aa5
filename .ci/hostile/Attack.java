// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Many connections of hostile callers, or of very many ordinary ones, moved by a thread of their own. */
final class Attack implements AutoCloseable {

    private static final long SECOND = 1_000_000_000L;
    private static final double LAST_ANSWERS_SECONDS = 20;

    private record Entry(double atSeconds, String from, Wire.Script script) {
    }

    final Tally tally = new Tally();
    private final Service service;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Scripts.Repeating> repeating = new ArrayList<>();
    private final List<Scripts.InParts> inParts = new ArrayList<>();
    private final List<Scripts.UntilClosed> untilClosed = new ArrayList<>();
    private final ConcurrentLinkedQueue<Runnable> orders = new ConcurrentLinkedQueue<>();
    private boolean awaitsParts;
    private Thread thread;
    private volatile boolean ends;

    Attack(Service service) {
        this.service = service;
    }

    /** A connection that is opened some seconds after the start, and makes a number of calls with a pause between them. */
    void calls(double atSeconds, String from, Supplier<byte[]> requests, int calls, double pauseSeconds) {
        Scripts.Repeating script = new Scripts.Repeating(requests, tally, calls, pauseSeconds);
        repeating.add(script);
        entries.add(new Entry(atSeconds, from, script));
    }

    /** A connection that sends as fast as it is answered. */
    void floods(String from, Supplier<byte[]> requests) {
        calls(0, from, requests, Integer.MAX_VALUE, 0);
    }

    /** A connection that sends one request in parts, after another, whole one unless that is null. */
    void sends(String from, byte[] before, List<Scripts.Part> parts) {
        Scripts.InParts script = new Scripts.InParts(before, parts, tally);
        inParts.add(script);
        entries.add(new Entry(0, from, script));
    }

    /** A connection that sends one request and waits until the service closes. */
    void asksOnce(String from, byte[] request) {
        Scripts.UntilClosed script = new Scripts.UntilClosed(request, tally);
        untilClosed.add(script);
        entries.add(new Entry(0, from, script));
    }

    /** How many of those are still open. */
    long notClosed() {
        return untilClosed.stream().filter(script -> !script.isClosed()).count();
    }

    List<Scripts.InParts> inParts() {
        return inParts;
    }

    /** At the end, what is sent in parts is waited for as well. */
    void awaitsParts() {
        awaitsParts = true;
    }

    void begin() {
        thread = new Thread(this::run, "attack");
        thread.start();
    }

    private void run() {
        ArrayDeque<Entry> left = new ArrayDeque<>();
        entries.stream().sorted(Comparator.comparingDouble(Entry::atSeconds)).forEachOrdered(left::add);
        long began = System.nanoTime();
        try (Wire wire = new Wire(service.port())) {
            while (!ends) {
                while (!left.isEmpty() && (System.nanoTime() - began) / 1e9 >= left.peek().atSeconds()) {
                    wire.open(left.peek().from(), left.poll().script());
                }
                for (Runnable order = orders.poll(); order != null; order = orders.poll()) {
                    order.run();
                }
                wire.move(2);
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Waits until every caller that makes calls has had this number of answers, of any status: whether they came in time. */
    boolean areAnswered(int each, double seconds) throws InterruptedException {
        return await(() -> repeating.stream().allMatch(script -> script.answers() >= each), seconds);
    }

    /** Waits until every caller that makes calls has had this number of answers of 200: whether they came in time. */
    boolean areServed(int each, double seconds) throws InterruptedException {
        return await(() -> repeating.stream().allMatch(script -> script.served() >= each), seconds);
    }

    /** Whether it holds before the seconds are over and the service ends. */
    private boolean await(BooleanSupplier holds, double seconds) throws InterruptedException {
        long end = System.nanoTime() + (long) (seconds * SECOND);
        while (!holds.getAsBoolean() && System.nanoTime() < end && service.isAlive()) {
            Thread.sleep(20);
        }
        return holds.getAsBoolean();
    }

    /**
     * Nobody connects any more, and every connection has been taken by the service: one that still waits at its door when the
     * port closes is lost, which a caller can only avoid by keeping away in time.
     */
    boolean connectNoMore() throws InterruptedException {
        orders.add(() -> repeating.forEach(Scripts.Repeating::connectNoMore));
        return await(() -> orders.isEmpty() && repeating.stream().noneMatch(Scripts.Repeating::isConnecting), LAST_ANSWERS_SECONDS);
    }

    /** Sends nothing more, waits for the answers to what was sent, and closes all. */
    @Override
    public void close() throws InterruptedException {
        orders.add(() -> repeating.forEach(Scripts.Repeating::finish));
        await(() -> orders.isEmpty() && repeating.stream().noneMatch(Scripts.Repeating::isWaiting)
                && (!awaitsParts || inParts.stream().allMatch(Scripts.InParts::hasEnded)), LAST_ANSWERS_SECONDS);
        ends = true;
        thread.join();
        repeating.stream().filter(Scripts.Repeating::isWaiting).forEach(never -> tally.cutOff());
    }
}
