// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.source.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What changed from version to version, newest first, read from {@code changelog.txt}. */
final class Changelog {

    /**
     * A version of the model and the contract.
     *
     * @param number such as 1.1.0
     * @param date when it came, as ISO 8601 writes it
     * @param changes what changed with it
     */
    record Version(String number, String date, List<Change> changes) {
    }

    /**
     * One change.
     *
     * @param kind what kind of change, in words
     * @param numbers whether a number changes for an equal request
     * @param what what changed
     * @param effect what that does to answers, or empty
     */
    record Change(String kind, boolean numbers, String what, String effect) {
    }

    /** Values for the template of the page. */
    record Page(List<Version> versions) {
    }

    private static final Map<String, String> KINDS = Map.of("number", "Numbers change", "added", "Added", "changed", "Changed");

    private Changelog() {
    }

    static List<Version> read() {
        Map<String, Version> versions = new LinkedHashMap<>();
        for (String[] row : Table.read("/dev/brinebook/docs/changelog.txt", '|', 5)) {
            boolean numbers = row[2].equals("number");
            if (numbers && row[4].isEmpty() || !KINDS.containsKey(row[2])) {
                throw new IllegalStateException("a change of kind " + row[2] + " lacks its effect: " + row[3]);
            }
            versions.computeIfAbsent(row[0], number -> new Version(number, row[1], new ArrayList<>())).changes()
                    .add(new Change(KINDS.get(row[2]), numbers, row[3], row[4]));
        }
        return List.copyOf(versions.values());
    }
}
