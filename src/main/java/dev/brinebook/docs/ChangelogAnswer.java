// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.model.Changelog;
import dev.brinebook.model.Changelog.Kind;
import dev.brinebook.model.Model;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("What changed from version to version, newest first, in English.")
public record ChangelogAnswer(
        @Property(value = "Every version of the formulas and of the contract.", maxItems = ChangelogAnswer.MOST_VERSIONS)
        List<ChangelogVersion> versions,
        @Property(value = "Versions that the header Model-Version accepts, newest first.", example = "[\"2.3.0\", \"2.2.0\"]",
                maxItems = ChangelogAnswer.MOST_CALLABLE)
        List<String> callableVersions,
        @Property(value = "Current version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    /** Years of versions and their changes. */
    static final int MOST_VERSIONS = 1_000;
    static final int MOST_ENTRIES = 1_000;
    /** The current version and the one before. */
    static final int MOST_CALLABLE = 2;

    @SchemaDescription("A version of the formulas and of the contract.")
    public record ChangelogVersion(
            @Property(value = "The version.", example = "\"2.3.0\"") String version,
            @Property(value = "The day it came.", example = "\"2026-11-29\"") LocalDate date,
            @Property(value = "What changed with it.", maxItems = ChangelogAnswer.MOST_ENTRIES) List<ChangelogEntry> entries) {
    }

    @SchemaDescription("A change.")
    public record ChangelogEntry(
            @Property(value = "Its name, which stays the same.", example = "\"brine-by-weight\"") String id,
            @Property("Its kind: number if a number changes for an equal request, added, changed.") Kind kind,
            @Property(value = "What changed.", example = "\"Adds the header Model-Version.\"") String text,
            @Property(value = "Its effect on answers.", optional = "if none is stated",
                    example = "\"The apartment is advised 1.8 kg instead of 1.73 kg.\"") String effect) {

        private static ChangelogEntry of(Changelog.Entry entry) {
            return new ChangelogEntry(entry.id(), entry.kind(), entry.text(), entry.effect().isEmpty() ? null : entry.effect());
        }
    }

    /** The newest {@code most} versions, each with at most so many entries. */
    public static ChangelogAnswer of(int most) {
        return new ChangelogAnswer(Changelog.versions().stream().limit(most).map(version -> new ChangelogVersion(version.number(),
                version.date(), version.entries().stream().limit(most).map(ChangelogEntry::of).toList())).toList(), Model.versions(),
                Model.CURRENT.version());
    }
}
