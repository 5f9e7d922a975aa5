// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * Connections to the service on loopback, thousands of them, moved by one thread. Each comes from a loopback address of its
 * caller's, so that callers can be distinguished, and does what its script says.
 */
final class Wire implements AutoCloseable {

    private static final long PASS_NANOS = 10_000_000L;

    /** What a connection does; every call comes from the thread that moves the wire. */
    interface Script {

        /** It is open. */
        void opened(Peer peer);

        /** A whole answer came. */
        void answered(Peer peer, Answer answer);

        /** The service ended it, or it could not be made. */
        void closed(Peer peer);

        /** Some hundredths of a second have passed. */
        default void pass(Peer peer, long now) {
        }
    }

    private final Selector selector = Selector.open();
    private final InetSocketAddress service;
    private final List<Peer> peers = new ArrayList<>();
    private final List<Peer> added = new ArrayList<>();
    private final ByteBuffer in = ByteBuffer.allocate(1 << 16);
    private long passed = System.nanoTime();

    Wire(int port) throws IOException {
        service = new InetSocketAddress("127.0.0.1", port);
    }

    /** Opens a connection from an address such as 127.0.0.3. */
    Peer open(String from, Script script) {
        Peer peer = new Peer(from, script);
        added.add(peer);
        peer.connect();
        return peer;
    }

    /** Moves what can be moved, for some milliseconds at most. */
    void move(int millis) {
        try {
            selector.select(this::move, millis);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        peers.addAll(added);
        added.clear();
        long now = System.nanoTime();
        if (now - passed >= PASS_NANOS) {
            passed = now;
            peers.removeIf(peer -> peer.done);
            peers.forEach(peer -> peer.script.pass(peer, now));
        }
    }

    private void move(SelectionKey key) {
        Peer peer = (Peer) key.attachment();
        if (key.isValid() && key.isConnectable()) {
            peer.finishConnect();
        }
        if (key.isValid() && key.isWritable()) {
            peer.write();
        }
        if (key.isValid() && key.isReadable()) {
            peer.read();
        }
    }

    @Override
    public void close() {
        peers.addAll(added);
        peers.forEach(Peer::end);
        try {
            selector.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A connection. */
    final class Peer {

        final String from;
        private final Script script;
        private final ArrayDeque<ByteBuffer> out = new ArrayDeque<>();
        private Answer.Reader reader;
        private SocketChannel channel;
        private SelectionKey key;
        private boolean done;

        Peer(String from, Script script) {
            this.from = from;
            this.script = script;
        }

        /** Makes it, anew if it was closed. */
        void connect() {
            try {
                out.clear();
                reader = new Answer.Reader();
                channel = SocketChannel.open();
                channel.configureBlocking(false);
                channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
                channel.bind(new InetSocketAddress(from, 0));
                key = channel.register(selector, SelectionKey.OP_CONNECT, this);
                if (channel.connect(service)) {
                    finishConnect();
                }
            } catch (IOException refused) {
                broken();
            }
        }

        private void finishConnect() {
            try {
                if (channel.isConnectionPending()) {
                    channel.finishConnect();
                }
                key.interestOps(SelectionKey.OP_READ);
                script.opened(this);
            } catch (IOException refused) {
                broken();
            }
        }

        boolean isOpen() {
            return channel.isConnected() && channel.isOpen();
        }

        boolean isConnecting() {
            return channel.isConnectionPending();
        }

        /** Whether the service has not closed it, by all that has come until now. */
        boolean isStillOpen() {
            read();
            return isOpen();
        }

        void send(byte[] bytes) {
            if (isOpen()) {
                out.add(ByteBuffer.wrap(bytes));
                write();
            }
        }

        private void write() {
            try {
                while (!out.isEmpty() && channel.isOpen()) {
                    channel.write(out.peek());
                    if (out.peek().hasRemaining()) {
                        break;
                    }
                    out.poll();
                }
                if (key.isValid()) {
                    key.interestOps(out.isEmpty() ? SelectionKey.OP_READ : SelectionKey.OP_READ | SelectionKey.OP_WRITE);
                }
            } catch (IOException notTaken) {
                out.clear(); // what was answered before can still be read
                key.interestOps(SelectionKey.OP_READ);
                read();
            }
        }

        private void read() {
            try {
                while (isOpen()) {
                    SocketChannel read = channel;
                    in.clear();
                    int count = read.read(in);
                    if (count == 0) {
                        return;
                    }
                    if (count < 0) {
                        atClose();
                        return;
                    }
                    byte[] bytes = new byte[count];
                    in.flip().get(bytes);
                    ByteBuffer came = ByteBuffer.wrap(bytes);
                    for (Answer answer = reader.read(came); answer != null; answer = reader.read(came)) {
                        script.answered(this, answer);
                        if (channel != read || !read.isOpen()) {
                            return;
                        }
                    }
                }
            } catch (IOException reset) {
                broken();
            }
        }

        private void atClose() {
            Answer last = reader.atClose();
            if (last != null) {
                script.answered(this, last);
            }
            if (channel.isOpen()) {
                broken();
            }
        }

        private void broken() {
            disconnect();
            script.closed(this);
        }

        /** Closes it; the script may connect it again. */
        void disconnect() {
            try {
                channel.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** Closes it for good. */
        void end() {
            done = true;
            disconnect();
        }
    }
}
