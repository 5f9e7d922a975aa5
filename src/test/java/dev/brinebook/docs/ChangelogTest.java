// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.model.Changelog;
import dev.brinebook.model.Changelog.Kind;
import dev.brinebook.model.Changelog.Version;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A number that changes for an equal request is a new version, with its effect in the changelog. */
class ChangelogTest {

    private final List<Version> versions = Changelog.versions();

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
        assertTrue(versions.size() >= 2, "it saw some");
    }

    @Test
    void statesWhyEachVersionButTheFirstIsNew() {
        for (Version version : versions.subList(0, versions.size() - 1)) {
            assertTrue(version.entries().stream().anyMatch(entry -> entry.kind() == Kind.NUMBER && !entry.effect().isBlank()),
                    version.number());
        }
    }

    /** A change of the model is an entry of its version, and of a number; a callable version lacks what a newer one brought. */
    @ParameterizedTest
    @EnumSource(ModelChange.class)
    void holdsEveryChangeOfTheModel(ModelChange change) {
        Version version = versions.stream().filter(one -> one.number().equals(change.version())).findFirst().orElseThrow();
        assertTrue(version.entries().contains(Changelog.entry(change)), change.id());
        assertEquals(Kind.NUMBER, Changelog.entry(change).kind());
        assertTrue(Model.CURRENT.has(change));
        assertFalse(Model.PREVIOUS.has(change), "every callable version has it: delete it");
    }

    @Test
    void listsTheCallableVersionsFirst() {
        assertEquals(Model.versions(), versions.stream().limit(Model.CALLABLE.size()).map(Version::number).toList());
    }

    /** Every id is used once, and the feed names it by a UUID that is worked out of it (RFC 9562, RFC 4287 section 4.2.6). */
    @ParameterizedTest
    @CsvSource({"brine-by-weight, urn:uuid:0e1872c2-8a43-3e9d-93a3-25ec2fa103bf",
        "model-version-header, urn:uuid:e25b6e4d-7035-3125-8acb-f0bcb526c90c"})
    void keepsItsIds(String id, String feedId) {
        assertEquals(List.of(feedId), ChangelogPage.of().versions().stream().flatMap(version -> version.changes().stream())
                .filter(entry -> entry.id().equals(id)).map(ChangelogPage.Entry::feedId).toList());
    }

    @Test
    void namesEveryOperation() {
        String all = versions.toString();
        Main.OPERATIONS.forEach(operation -> assertTrue(all.contains(operation.id()), operation.id()));
        // Names that callers use: of tools, settings and metrics. Those of constants are not among them.
        String rest = all.replaceAll(
                "(quick_assess|find_operation|describe_operation|PUBLIC_URL|OTEL_EXPORTER_OTLP_ENDPOINT|[a-z_]+_(seconds|total))", "");
        assertFalse(rest.contains("_"), rest);
    }
}
