// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Counts the data rows of a test table, so that an empty or shortened one cannot pass. */
public final class Rows {

    private Rows() {
    }

    /** Data rows of a table on the test class path: lines that are neither blank, comment nor the one header. */
    public static long in(String resource) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Rows.class.getResourceAsStream(resource), resource), StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).count() - 1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
