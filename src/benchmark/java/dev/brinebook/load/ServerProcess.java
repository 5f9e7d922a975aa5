// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/** A server under measurement, in a process of its own. */
final class ServerProcess implements AutoCloseable {

    private static final double TICKS_PER_SECOND = 100; // USER_HZ of Linux on every common architecture
    private static final int USER_TIME = 11; // behind the name of the command in /proc/PID/stat
    private static final int SYSTEM_TIME = 12;
    private static final int MOST_SECONDS_TO_START = 60;
    private static final Pattern COMPILER = Pattern.compile("C[12] CompilerThre");

    private final String name;
    private final int port;
    private final Process process;
    private final double readySeconds;

    private ServerProcess(String name, int port, Process process, double readySeconds) {
        this.name = name;
        this.port = port;
        this.process = process;
        this.readySeconds = readySeconds;
    }

    /** Starts it; what it logs goes to a file, as a log does. It is ready when {@code readyPath} is answered with 200. */
    static ServerProcess start(String name, int port, List<String> command, Map<String, String> environment, String readyPath)
            throws IOException, InterruptedException {
        refuseTaken(port);
        Path log = Path.of("target", "load", name + ".log");
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        builder.environment().put("PORT", "" + port);
        long began = System.nanoTime();
        Process process = builder.start();
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        while (!Connection.answers(port, readyPath)) {
            if (!process.isAlive() || System.nanoTime() - began > TimeUnit.SECONDS.toNanos(MOST_SECONDS_TO_START)) {
                process.destroyForcibly();
                throw new IOException(name + " did not start: " + Files.readString(log));
            }
            TimeUnit.MILLISECONDS.sleep(1);
        }
        return new ServerProcess(name, port, process, (System.nanoTime() - began) / 1e9);
    }

    private static void refuseTaken(int port) throws IOException {
        try (Socket probe = new Socket()) {
            probe.connect(new InetSocketAddress("127.0.0.1", port));
        } catch (IOException free) {
            return;
        }
        throw new IOException("port " + port + " is taken: LOAD_PORT names another");
    }

    String name() {
        return name;
    }

    int port() {
        return port;
    }

    long pid() {
        return process.pid();
    }

    double readySeconds() {
        return readySeconds;
    }

    /** Processor time of all its threads since its start, the kernel's work for it included; known to a hundredth. */
    double processorSeconds() throws IOException {
        return seconds(Path.of("/proc", "" + process.pid()));
    }

    /** The same without the threads in which Java compiles, which have less and less to do the longer it runs. */
    double answeringSeconds() throws IOException {
        double seconds = processorSeconds();
        try (var threads = Files.list(Path.of("/proc", "" + process.pid(), "task"))) {
            for (Path thread : (Iterable<Path>) threads::iterator) {
                if (COMPILER.matcher(read(thread.resolve("comm"))).lookingAt()) {
                    seconds -= seconds(thread);
                }
            }
        }
        return seconds;
    }

    private static double seconds(Path process) {
        String stat = read(process.resolve("stat"));
        String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
        return fields.length < SYSTEM_TIME ? 0
                : (Long.parseLong(fields[USER_TIME]) + Long.parseLong(fields[SYSTEM_TIME])) / TICKS_PER_SECOND;
    }

    /** Nothing of a thread that has ended meanwhile. */
    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException ended) {
            return "";
        }
    }

    /** Memory that is its own and no file's, MiB. */
    double anonymousMebibytes() throws IOException {
        try (var lines = Files.lines(Path.of("/proc", "" + process.pid(), "smaps_rollup"))) {
            return lines.filter(line -> line.startsWith("Anonymous:")).mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .sum() / 1024.0;
        }
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
