// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The revisions of the Model Context Protocol that are spoken. The newest has no opening: each request says all of itself. */
enum Revision {
    MARCH_2025("2025-03-26"), JUNE_2025("2025-06-18"), NOVEMBER_2025("2025-11-25"), JULY_2026("2026-07-28");

    /** The one that a request without a version is taken for (2025-06-18, "Protocol Version Header"). */
    static final Revision UNSAID = MARCH_2025;
    /** The one named to a client that opens with an unknown one. */
    static final Revision NEWEST_OPENED = NOVEMBER_2025;

    private final String date;

    Revision(String date) {
        this.date = date;
    }

    static Optional<Revision> of(Object date) {
        return Arrays.stream(values()).filter(revision -> revision.date.equals(date)).findFirst();
    }

    /** All dates, newest first. */
    static List<String> dates() {
        List<String> dates = Arrays.asList(Arrays.stream(values()).map(Revision::date).toArray(String[]::new));
        Collections.reverse(dates);
        return List.copyOf(dates);
    }

    String date() {
        return date;
    }

    /** Whether its requests are opened by {@code initialize}. */
    boolean isOpened() {
        return this != JULY_2026;
    }

    /** Whether results may hold structured content and links to resources. */
    boolean isStructured() {
        return this != MARCH_2025;
    }
}
