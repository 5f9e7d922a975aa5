// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import dev.brinebook.http.limit.RequestMetrics;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Names of callers by the SHA-256 of their keys, from a file that is read again when it changes. Keys are long and random, so
 * that a plain hash is enough; neither the key nor its hash leaves this class.
 */
final class ApiKeys {

    private static final Logger LOG = LoggerFactory.getLogger(ApiKeys.class);
    private static final Pattern LINE = Pattern.compile("([A-Za-z0-9._-]{1,64}):([0-9a-fA-F]{64})");
    private static final long LOOK_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(1);

    private record Key(String name, byte[] hash) {
    }

    private final Path file;
    private final AtomicLong looked;
    private volatile byte[] content;
    private volatile List<Key> keys;

    /**
     * The keys of a file.
     *
     * @throws IllegalArgumentException when it cannot be read, or a line is none of {@code name:sha256}, blank, or a comment
     */
    ApiKeys(Path file) {
        this.file = file;
        try {
            content = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new IllegalArgumentException("API_KEYS_FILE cannot be read: " + file, e);
        }
        keys = parse(content);
        looked = new AtomicLong(System.nanoTime());
    }

    /** The name of the caller with this key, found in constant time, whether or not it is in the list. */
    Optional<String> nameOf(String key) {
        byte[] hash = sha256(key);
        String found = null;
        for (Key each : current()) {
            if (MessageDigest.isEqual(hash, each.hash())) {
                found = each.name();
            }
        }
        return Optional.ofNullable(found);
    }

    int count() {
        return current().size();
    }

    /**
     * Content of the file, checked once a second by one of the requests, while no other waits; a file that cannot be used leaves the keys
     * unchanged.
     */
    private List<Key> current() {
        long last = looked.get();
        long nanos = System.nanoTime();
        if (nanos - last < LOOK_AGAIN_NANOS || !looked.compareAndSet(last, nanos)) {
            return keys;
        }
        try {
            byte[] now = Files.readAllBytes(file);
            if (!Arrays.equals(now, content)) {
                content = now;
                keys = parse(now);
                LOG.info("{} API keys read again", keys.size());
            }
        } catch (IOException | IllegalArgumentException faulty) {
            LOG.error("the API keys are unchanged: {}", faulty.getMessage());
        }
        return keys;
    }

    /** A name may be on several lines: while a caller changes its key, both are taken. */
    private static List<Key> parse(byte[] content) {
        List<Key> keys = new ArrayList<>();
        String[] lines = text(content).split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            Matcher entry = LINE.matcher(line);
            if (!entry.matches()) {
                throw new IllegalArgumentException("API_KEYS_FILE line " + (i + 1) + " is not name:sha256 in hex");
            }
            keys.add(new Key(entry.group(1), HexFormat.of().parseHex(entry.group(2))));
        }
        if (keys.isEmpty() || keys.size() > RequestMetrics.MOST_CALLERS) {
            throw new IllegalArgumentException("API_KEYS_FILE must hold 1 to " + RequestMetrics.MOST_CALLERS + " keys, has " + keys.size());
        }
        return keys;
    }

    private static String text(byte[] content) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("API_KEYS_FILE is not in UTF-8", e);
        }
    }

    private static byte[] sha256(String key) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
