// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.net.BindException;
import java.net.HttpURLConnection;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The packaged service as a process of its own, under the flags of the image. It knows of one processor, and is kept on one where
 * there are two once it has started and is warm: until then the compiler may have the other.
 */
final class Service implements AutoCloseable {

    static final int TICKS_PER_SECOND = 100; // USER_HZ of Linux on every common architecture
    private static final int IMAGE_JAVA = 25;
    private static final int MOST_START_TRIES = 1_200;

    private final int port;
    private final Path log;
    private final Process process;

    private Service(int port, Path log, Process process) {
        this.port = port;
        this.log = log;
        this.process = process;
    }

    /**
     * What can be seen of the process.
     *
     * @param heapBytes what a collection leaves on the heap
     */
    record State(long heapBytes, int threads, int descriptors) {
    }

    /** Starts it on a port, with metrics on the one above, and waits until it is ready. */
    static Service start(Path jar, int port, Path log, Map<String, String> environment) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.addAll(List.of("taskset", "-c", System.getenv().getOrDefault("START_PROCESSORS", processor())));
        command.add(java().resolve("bin/java").toString());
        command.addAll(imageFlags());
        command.add("-XX:ActiveProcessorCount=1");
        command.addAll(List.of("-jar", jar.toString()));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().putAll(Map.of("PORT", "" + port, "METRICS_PORT", "" + (port + 1), "HOST", "127.0.0.1"));
        builder.environment().putAll(environment);
        refuseTakenPort(port);
        Service service = new Service(port, log, builder.start());
        Runtime.getRuntime().addShutdownHook(new Thread(service.process::destroyForcibly));
        for (int tries = 0; tries < MOST_START_TRIES && service.isAlive(); tries++) {
            if (service.isReady()) {
                return service;
            }
            Thread.sleep(100);
        }
        service.close();
        throw new IllegalStateException("the service did not start: " + Files.readString(log));
    }

    /** From here on it has its one processor alone. */
    void keepOnItsProcessor() throws IOException, InterruptedException {
        new ProcessBuilder("taskset", "-a", "-c", "-p", processor(), "" + process.pid()).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
    }

    private static void refuseTakenPort(int port) throws IOException {
        for (int each : new int[] {port, port + 1}) {
            try (ServerSocket probe = new ServerSocket()) {
                probe.setReuseAddress(true);
                probe.bind(new InetSocketAddress("127.0.0.1", each));
            } catch (BindException taken) {
                throw new IllegalStateException("port " + each + " is in use: set HOSTILE_PORT to another", taken);
            }
        }
    }

    /** JDK_JAVA_OPTIONS of the Dockerfile, which is their one place. */
    static List<String> imageFlags() throws IOException {
        String line = Files.readAllLines(Path.of("Dockerfile")).stream().filter(each -> each.contains("JDK_JAVA_OPTIONS="))
                .findFirst().orElseThrow(() -> new IllegalStateException("no JDK_JAVA_OPTIONS in the Dockerfile"));
        List<String> flags = new ArrayList<>(Arrays.asList(line.replaceAll("^.*JDK_JAVA_OPTIONS=\"|\".*$", "").split("\\s+")));
        flags.removeIf(flag -> flag.startsWith("-XX:AOT"));
        if (!flags.contains("-Xmx96m")) {
            throw new IllegalStateException("the limits of this step are made for -Xmx96m, the Dockerfile has " + flags);
        }
        if (version(java()) < IMAGE_JAVA) {
            flags.add(0, "-XX:+IgnoreUnrecognizedVMOptions");
        }
        return flags;
    }

    /** The Java of the image where it is installed, else the one that runs this. */
    static Path java() throws IOException {
        Path folder = Path.of("/usr/lib/jvm");
        Path own = Path.of(System.getProperty("java.home"));
        if (!Files.isDirectory(folder)) {
            return own;
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(each -> version(each) >= IMAGE_JAVA).sorted().findFirst().orElse(own);
        }
    }

    /** Its feature release; 0 when there is no Java in the folder. */
    static int version(Path java) {
        Path release = java.resolve("release");
        try {
            if (!Files.isExecutable(java.resolve("bin/java")) || !Files.exists(release)) {
                return 0;
            }
            return Files.readAllLines(release).stream().filter(line -> line.startsWith("JAVA_VERSION="))
                    .mapToInt(line -> Integer.parseInt(line.replaceAll("[^0-9.]", "").split("\\.")[0])).findFirst().orElse(0);
        } catch (IOException unreadable) {
            return 0;
        }
    }

    /** Number of the processor that it runs on. */
    static String processor() {
        return System.getenv().getOrDefault("SERVICE_PROCESSOR", "0");
    }

    int port() {
        return port;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Whether readiness, on the port for the orchestrator, is answered with 200 within two seconds. */
    boolean isReady() {
        try {
            HttpURLConnection asked = (HttpURLConnection) URI.create("http://127.0.0.1:" + (port + 1) + "/health/ready").toURL()
                    .openConnection();
            asked.setConnectTimeout(2_000);
            asked.setReadTimeout(2_000);
            int status = asked.getResponseCode();
            asked.disconnect();
            return status == 200;
        } catch (IOException notYet) {
            return false;
        }
    }

    /** Processor time of the process so far. */
    double processorSeconds() {
        try {
            String[] fields = Files.readString(Path.of("/proc/" + process.pid() + "/stat")).replaceAll("^.*\\) ", "").split(" ");
            return (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / (double) TICKS_PER_SECOND;
        } catch (IOException ended) {
            return Double.NaN;
        }
    }

    /** What it holds after a full collection, or null when it has ended or does not say in time. */
    State state() throws IOException, InterruptedException {
        Path histogram = log.resolveSibling("histogram.txt");
        Path jcmd = java().resolve("bin/jcmd");
        Process asked = new ProcessBuilder((Files.isExecutable(jcmd) ? jcmd : Path.of("jcmd")).toString(), "" + process.pid(),
                "GC.class_histogram").redirectErrorStream(true).redirectOutput(histogram.toFile()).start();
        if (!asked.waitFor(30, TimeUnit.SECONDS)) {
            asked.destroyForcibly();
            return null;
        }
        long heap = Files.readAllLines(histogram).stream().filter(line -> line.startsWith("Total"))
                .mapToLong(line -> Long.parseLong(line.strip().split("\\s+")[2])).findFirst().orElse(-1);
        return heap < 0 || !isAlive() ? null : new State(heap, count("task"), count("fd"));
    }

    private int count(String folder) throws IOException {
        try (Stream<Path> entries = Files.list(Path.of("/proc/" + process.pid() + "/" + folder))) {
            return (int) entries.count();
        }
    }

    /** Lines of its log that no caller may bring about: stack traces, faults of the service, status 500. */
    List<String> faultsLogged() throws IOException {
        try (Stream<String> lines = Files.lines(log)) {
            return lines.filter(line -> line.contains("\\n\\tat ") || line.startsWith("\tat ") || line.contains("OutOfMemoryError")
                    || line.contains("Exception in thread") || line.contains("\"level\":\"ERROR\"")
                    || line.contains("\"status\":500")).toList();
        }
    }

    void terminate() {
        process.destroy();
    }

    boolean endsWithin(int seconds) throws InterruptedException {
        return process.waitFor(seconds, TimeUnit.SECONDS);
    }

    @Override
    public void close() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }
}
