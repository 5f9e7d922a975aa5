// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import com.sun.tools.attach.VirtualMachine;
import java.io.File;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.management.JMX;
import javax.management.MBeanServerConnection;
import javax.management.ObjectName;
import javax.management.remote.JMXConnector;
import javax.management.remote.JMXConnectorFactory;
import javax.management.remote.JMXServiceURL;

/** A server under measurement, in a process of its own. */
final class Running implements AutoCloseable {

    private static final String THREADS = "java.lang:type=Threading";

    private final Process process;
    private final int port;

    private Running(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** The packaged service. */
    static Running brinebook(int port, String... flags) throws IOException, InterruptedException {
        List<String> command = command(flags);
        command.addAll(List.of("-jar", jar().toString()));
        return start(command, port);
    }

    /** A {@link Peer} of that kind, giving the answer in {@code answer}. */
    static Running peer(String kind, int port, Path answer, String... flags) throws IOException, InterruptedException {
        List<String> command = command(flags);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Peer.class.getName(), kind, Integer.toString(port),
                answer.toString()));
        return start(command, port);
    }

    private static List<String> command(String... flags) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(Arrays.asList(flags));
        return command;
    }

    private static File jar() throws IOException {
        try (var files = Files.list(Path.of("target"))) {
            return files.filter(file -> file.getFileName().toString().matches("brinebook-[\\d.]+\\.jar")).findFirst()
                    .orElseThrow(() -> new IOException("no jar in target: package first")).toFile();
        }
    }

    private static Running start(List<String> command, int port) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(Path.of("target", "running-" + port + ".log").toFile());
        builder.environment().put("PORT", Integer.toString(port));
        builder.environment().put("METRICS_PORT", Integer.toString(port + 1_000));
        builder.environment().put("HOST", "127.0.0.1");
        Running running = new Running(builder.start(), port);
        for (int attempt = 0; attempt < 3_000; attempt++) {
            try (Socket socket = new Socket()) {
                socket.connect(new InetSocketAddress("127.0.0.1", port));
                return running;
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(10);
            }
        }
        running.close();
        throw new IOException("no answer of " + command);
    }

    int port() {
        return port;
    }

    long pid() {
        return process.pid();
    }

    /** Bytes that its threads allocated so far. */
    long allocatedBytes() throws Exception {
        VirtualMachine machine = VirtualMachine.attach(Long.toString(process.pid()));
        String address = machine.startLocalManagementAgent();
        machine.detach();
        try (JMXConnector connector = JMXConnectorFactory.connect(new JMXServiceURL(address))) {
            MBeanServerConnection beans = connector.getMBeanServerConnection();
            var threads = JMX.newMXBeanProxy(beans, new ObjectName(THREADS), com.sun.management.ThreadMXBean.class);
            return Arrays.stream(threads.getThreadAllocatedBytes(threads.getAllThreadIds())).filter(bytes -> bytes > 0).sum();
        }
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
