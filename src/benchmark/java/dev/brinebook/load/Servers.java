// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Starts the service and its peers. All that are in Java run on the same Java, under the flags of the image. A calculation may take
 * longer than by default, as the machine may be busy.
 *
 * @param service its jar, or a class path
 * @param java the Java to run it, and the peers on Java
 * @param firstPort each server takes two ports from here on
 */
record Servers(String service, Path java, int firstPort) {

    static final Path WORK = Path.of("target", "load");
    /** Keys of the callers: one has at most 1,000,000 requests a minute. */
    private static final int CALLERS = 16;
    private static final String READY = "/health/ready";
    private static final Pattern IMAGE_FLAGS = Pattern.compile("JDK_JAVA_OPTIONS=\"([^\"]*)\"");

    List<String> keys() {
        return IntStream.range(0, CALLERS).mapToObj("key-of-an-invented-caller-%02d"::formatted).toList();
    }

    /** The service with keys and rates on; {@code before} is a command that it runs under, {@code flags} more flags of Java. */
    ServerProcess service(List<String> before, List<String> flags) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(before);
        command.addAll(javaCommand());
        command.addAll(flags);
        command.addAll(isJar() ? List.of("-jar", service) : List.of("-cp", service, "dev.brinebook.Start"));
        return ServerProcess.start("service", firstPort, command, environment(), READY);
    }

    private Map<String, String> environment() throws IOException {
        Path keysFile = WORK.resolve("keys");
        Files.write(keysFile, keys().stream().map(key -> "caller-" + key.substring(key.length() - 2) + ":" + sha256(key)).toList());
        return Map.of("METRICS_PORT", "" + (firstPort + 1), "HOST", "127.0.0.1", "API_KEYS_FILE", keysFile.toString(),
                "RATE_LIMIT_PER_MINUTE", "1000000", "CALCULATION_MILLISECONDS", "600000");
    }

    boolean isJar() {
        return service.endsWith(".jar");
    }

    /** Flags that start the jar from a cache of a training run, made unless there is one; none for a class path. */
    List<String> cache() throws IOException, InterruptedException {
        if (!isJar()) {
            return List.of();
        }
        boolean aot = version() >= 25;
        Path jar = Path.of(service).toAbsolutePath();
        Path cache = WORK.resolve("%08x.%d.cache".formatted(jar.hashCode(), version())).toAbsolutePath();
        String flag = (aot ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + cache;
        if (Files.exists(cache) && Files.getLastModifiedTime(cache).compareTo(Files.getLastModifiedTime(jar)) > 0) {
            return List.of(flag);
        }
        Files.deleteIfExists(cache);
        List<String> command = javaCommand();
        command.addAll(List.of(aot ? "-XX:AOTCacheOutput=" + cache : "-XX:ArchiveClassesAtExit=" + cache, "-XX:MaxMetaspaceSize=256m",
                "-cp", service, "dev.brinebook.tool.TrainingRun"));
        Process training = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(WORK.resolve("training.log").toFile()).start();
        if (training.waitFor() != 0 || !Files.exists(cache)) {
            throw new IOException("no cache: see " + WORK.resolve("training.log"));
        }
        return List.of(flag);
    }

    int version() throws IOException {
        Matcher version = Pattern.compile("JAVA_VERSION=\"(\\d+)").matcher(Files.readString(java.resolve("release")));
        return version.find() ? Integer.parseInt(version.group(1)) : 0;
    }

    private List<String> javaCommand() throws IOException {
        Matcher flags = IMAGE_FLAGS.matcher(Files.readString(Path.of("Dockerfile")));
        List<String> command = new ArrayList<>(List.of(java.resolve("bin").resolve("java").toString()));
        if (flags.find()) {
            command.addAll(List.of(flags.group(1).split(" ")));
        }
        return command;
    }

    /** A {@link Peer} of a kind. */
    ServerProcess javaPeer(String kind, int number, Requests requests) throws IOException, InterruptedException {
        List<String> command = javaCommand();
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Peer.class.getName(), kind, "" + port(number)));
        for (String operation : requests.operations()) {
            try (var files = Files.list(Requests.EXAMPLES)) {
                files.filter(file -> file.getFileName().toString().matches(operation + "\\.[a-z-]+\\.response\\.json")).sorted()
                        .reduce((first, last) -> last).ifPresent(file -> command.add(requests.path(operation) + "=" + file));
            }
        }
        return ServerProcess.start(kind, port(number), command, Map.of(), READY);
    }

    /** A peer of {@code src/benchmark/peers}, which listens where PORT says. */
    ServerProcess peer(String name, int number, String... command) throws IOException, InterruptedException {
        return ServerProcess.start(name, port(number), List.of(command), Map.of(), READY);
    }

    private int port(int number) {
        return firstPort + 2 * number;
    }

    private static String sha256(String key) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
