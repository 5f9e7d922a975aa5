// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.util.concurrent.locks.LockSupport;

/**
 * Opens the given number of connections at once, sends nothing on any of them, reports how many were made within five seconds
 * and holds them until the standard input ends.
 *
 * <pre>
 * java Idle.java port connections</pre>
 */
final class Idle {

    private static final long LONGEST_NANOS = 5_000_000_000L;

    private Idle() {
    }

    public static void main(String[] arguments) throws IOException {
        InetSocketAddress service = new InetSocketAddress("127.0.0.1", Integer.parseInt(arguments[0]));
        int wanted = Integer.parseInt(arguments[1]);
        int made = 0;
        long end = System.nanoTime() + LONGEST_NANOS;
        try (Selector selector = Selector.open()) {
            for (int i = 0; i < wanted; i++) {
                SocketChannel channel = SocketChannel.open();
                channel.configureBlocking(false);
                if (channel.connect(service)) {
                    made++;
                } else {
                    channel.register(selector, SelectionKey.OP_CONNECT);
                }
                if (i % 100 == 0) { // as many callers do, not as one that floods
                    made += finish(selector);
                    LockSupport.parkNanos(10_000_000);
                }
            }
            while (made < wanted && System.nanoTime() < end) {
                selector.select(100);
                made += finish(selector);
            }
            System.out.println(made);
            while (System.in.read() >= 0) {
                // holds them
            }
        }
    }

    private static int finish(Selector selector) throws IOException {
        int made = 0;
        selector.selectNow();
        for (SelectionKey key : selector.selectedKeys()) {
            if (((SocketChannel) key.channel()).finishConnect()) {
                key.interestOps(0);
                made++;
            }
        }
        selector.selectedKeys().clear();
        return made;
    }
}
