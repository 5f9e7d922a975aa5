// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.model;

import dev.brinebook.source.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What changed from version to version, newest first, read from {@code changelog.txt}. It is in English alone. */
public final class Changelog {

    private static final List<Version> VERSIONS = read();

    /** What an entry is of. */
    public enum Kind {
        /** A number changes for an equal request. */
        NUMBER,
        /** Something is new. */
        ADDED,
        /** Something else changes. */
        CHANGED
    }

    /**
     * A version of the model and the contract.
     *
     * @param number such as 1.1.0
     * @param date when it came
     * @param entries what changed with it
     */
    public record Version(String number, LocalDate date, List<Entry> entries) {

        public Version {
            entries = List.copyOf(entries);
        }
    }

    /**
     * One change.
     *
     * @param id names it for good
     * @param kind what kind of change it is
     * @param text what changed
     * @param effect what that does to answers, or empty
     */
    public record Entry(String id, Kind kind, String text, String effect) {
    }

    private Changelog() {
    }

    /** Every version, newest first. */
    public static List<Version> versions() {
        return List.copyOf(VERSIONS);
    }

    /** The entry of a change of the model. */
    public static Entry entry(ModelChange change) {
        return VERSIONS.stream().flatMap(version -> version.entries().stream()).filter(entry -> entry.id().equals(change.id()))
                .findFirst().orElseThrow(() -> new IllegalStateException("no entry of the changelog is called " + change.id()));
    }

    private static List<Version> read() {
        Map<String, List<Entry>> entries = new LinkedHashMap<>();
        Map<String, LocalDate> dates = new HashMap<>();
        Set<String> ids = new HashSet<>();
        for (String[] row : Table.read("/dev/brinebook/model/changelog.txt", '|', 6)) {
            Entry entry = new Entry(row[5], Kind.valueOf(row[2].toUpperCase(Locale.ROOT)), row[3], row[4]);
            if (entry.kind() == Kind.NUMBER && entry.effect().isEmpty() || !ids.add(entry.id()) || !entry.id().matches("[a-z][a-z0-9-]+")) {
                throw new IllegalStateException("an entry lacks its effect, or an id of its own: " + String.join("|", row));
            }
            dates.putIfAbsent(row[0], LocalDate.parse(row[1]));
            entries.computeIfAbsent(row[0], number -> new ArrayList<>()).add(entry);
        }
        return entries.entrySet().stream().map(version -> new Version(version.getKey(), dates.get(version.getKey()), version.getValue()))
                .toList();
    }
}
