// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.docs.Changelog.Version;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A number that changes for an equal request is a new version, with its effect in the changelog. */
class ChangelogTest {

    private final List<Version> versions = Changelog.read();

    @Test
    void beginsWithTheVersionThatAnswersHold() {
        assertEquals(ModelVersion.CURRENT, versions.get(0).number());
    }

    /** Semantic Versioning 2.0.0, precedence of plain versions. */
    @Test
    void runsFromTheNewestToTheOldest() {
        Comparator<Version> byNumber = Comparator.comparing(version -> java.lang.Runtime.Version.parse(version.number()
                .replaceAll("(\\.0)+$", "")));
        assertEquals(versions.stream().sorted(byNumber.reversed()).toList(), versions);
        versions.forEach(version -> LocalDate.parse(version.date()));
        assertTrue(versions.size() >= 2, "it saw some");
    }

    @Test
    void statesWhyEachVersionButTheFirstIsNew() {
        for (Version version : versions.subList(0, versions.size() - 1)) {
            assertTrue(version.changes().stream().anyMatch(change -> change.numbers() && !change.effect().isBlank()),
                    version.number());
        }
    }

    @Test
    void namesEveryOperation() {
        String all = versions.toString();
        Main.OPERATIONS.forEach(operation -> assertTrue(all.contains(operation.id()), operation.id()));
        assertFalse(all.contains("_"), all);
    }
}
