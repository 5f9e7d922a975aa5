// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * Reads a table of the trade from the class path: {@code #} comments that name the source, one header line, then rows.
 *
 * <p>Not a general CSV reader: cells are never quoted, so none may contain the separator.
 */
public final class Table {

    private Table() {
    }

    /**
     * The rows of a table, each cell stripped.
     *
     * @throws IllegalStateException when a row has another number of cells than {@code columns}, or there is no row
     */
    public static List<String[]> read(String resource, char separator, int columns) {
        Pattern split = Pattern.compile(" *" + Pattern.quote(String.valueOf(separator)) + " *");
        InputStream stream = Objects.requireNonNull(Table.class.getResourceAsStream(resource), resource);
        List<String[]> rows = lines(stream).stream().skip(1).map(line -> split.split(line.strip(), -1)).toList();
        for (String[] row : rows) {
            if (row.length != columns) {
                throw new IllegalStateException(resource + ": " + columns + " cells wanted in " + String.join("|", row));
            }
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(resource + " has no rows");
        }
        return rows;
    }

    static List<String> lines(InputStream stream) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
