// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.tool;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Sends one share of a folder of NDJSON files through a running service and writes the answers beside them, as one worker of
 * an indexed job: of the files in order of their names, worker {@code i} of {@code n} takes every n-th from the i-th on. A file
 * is written under its name only when it is whole, and one that is there is not asked again, so that a worker can be repeated.
 */
public final class BulkShard {

    /** Lines of one request: enough to keep a replica busy, few enough that requests spread over replicas. */
    private static final int LINES = 100;
    private static final int ATTEMPTS = 8;

    /** Broken off, asked too often, busy. */
    private static final Set<Integer> AGAIN = Set.of(200, 429, 503);
    private static final Pattern LINE = Pattern.compile("^(\\{\"line\":)(\\d+)");
    private static final Duration TIMEOUT = Duration.ofMinutes(10);

    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final URI service;

    private BulkShard(URI service) {
        this.service = service;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Map<String, String> environment = System.getenv();
        send(URI.create(environment.get("BULK_URI")), Path.of(environment.get("BULK_REQUESTS")),
                Path.of(environment.get("BULK_ANSWERS")), Integer.parseInt(environment.get("JOB_COMPLETION_INDEX")),
                Integer.parseInt(environment.get("BULK_SHARDS")));
    }

    /**
     * Sends every file of one share.
     *
     * @param service address of a bulk path, such as {@code http://brinebook/v1/bulk/assess}
     * @param requests folder of {@code *.ndjson}
     * @param answers folder of files with the same names
     */
    static void send(URI service, Path requests, Path answers, int index, int shards)
            throws IOException, InterruptedException {
        BulkShard shard = new BulkShard(service);
        List<Path> files;
        try (Stream<Path> found = Files.list(requests)) {
            files = found.filter(file -> file.toString().endsWith(".ndjson")).sorted().toList();
        }
        for (int i = index; i < files.size(); i += shards) {
            shard.send(files.get(i), answers.resolve(files.get(i).getFileName()));
        }
    }

    private void send(Path requests, Path answers) throws IOException, InterruptedException {
        if (Files.exists(answers)) {
            return;
        }
        Path unfinished = answers.resolveSibling(answers.getFileName() + ".unfinished");
        try (BufferedReader reader = Files.newBufferedReader(requests); BufferedWriter writer = Files.newBufferedWriter(unfinished)) {
            int before = 0;
            for (List<String> lines = next(reader); !lines.isEmpty(); lines = next(reader)) {
                for (String answer : ask(lines)) {
                    writer.write(countedFrom(before, answer));
                    writer.write('\n');
                }
                before += lines.size();
            }
        }
        Files.move(unfinished, answers, StandardCopyOption.ATOMIC_MOVE);
    }

    private static List<String> next(BufferedReader reader) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String line = reader.readLine(); line != null; line = lines.size() == LINES ? null : reader.readLine()) {
            lines.add(line);
        }
        return lines;
    }

    /** An answer has the line of its request; here the line of the file is needed. */
    private static String countedFrom(int before, String answer) {
        Matcher matcher = LINE.matcher(answer);
        return matcher.replaceFirst(match -> match.group(1) + (before + Integer.parseInt(match.group(2))));
    }

    private List<String> ask(List<String> lines) throws IOException, InterruptedException {
        long expected = lines.stream().filter(line -> !line.isBlank()).count();
        HttpRequest request = HttpRequest.newBuilder(service).header("Content-Type", "application/x-ndjson").timeout(TIMEOUT)
                .POST(BodyPublishers.ofString(String.join("\n", lines) + "\n")).build();
        IOException last = null;
        for (int attempt = 1; attempt <= ATTEMPTS && expected > 0; attempt++) {
            long pauseSeconds = attempt;
            try {
                HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
                List<String> answers = answer.body().lines().toList();
                if (answer.statusCode() == 200 && answers.size() == expected) {
                    return answers;
                }
                last = new IOException(service + " answered " + answer.statusCode() + " with " + answers.size() + " lines");
                if (!AGAIN.contains(answer.statusCode())) {
                    break;
                }
                pauseSeconds = answer.headers().firstValueAsLong("Retry-After").orElse(attempt);
            } catch (IOException gone) { // a replica that stopped; the next attempt meets another
                last = gone;
            }
            TimeUnit.SECONDS.sleep(pauseSeconds);
        }
        if (last != null) {
            throw last;
        }
        return List.of();
    }
}
