// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The contract as it is served: the committed files, and what is cut out of them. */
public final class ContractFiles {

    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();
    private static final Map<String, byte[]> BY_OPERATION = new ConcurrentHashMap<>();

    private ContractFiles() {
    }

    public static byte[] yaml() {
        return read("openapi.yaml");
    }

    public static byte[] json() {
        return read("openapi.json");
    }

    /** The contract of one operation alone, complete in itself; empty where no operation has the id. */
    public static Optional<byte[]> json(String operationId) {
        // Of an unknown operation nothing is kept, or callers could fill the memory.
        return Optional.ofNullable(BY_OPERATION.computeIfAbsent(operationId, id -> {
            try {
                return OperationContract.of(JSON.readTree(json()), id).map(document -> document.toString().getBytes(StandardCharsets.UTF_8))
                        .orElse(null);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }));
    }

    /** A committed request or answer; {@code file} is a name that the contract lists. */
    public static byte[] example(String file) {
        return read("examples/" + file);
    }

    private static byte[] read(String file) {
        try (InputStream stream = ContractFiles.class.getResourceAsStream("/openapi/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("no file " + file);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
