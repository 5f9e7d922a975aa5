// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.model.Changelog;
import dev.brinebook.model.Changelog.Kind;
import dev.brinebook.model.Model;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/**
 * The changelog for people, as a page and as a feed of one item an entry (Atom, RFC 4287). Dates are whole days, as the
 * changelog has them.
 *
 * @param feedId id of the feed
 * @param updated when the newest version came, as RFC 3339 writes it
 * @param callable versions that can be called, in words
 * @param versions every version, newest first
 */
record ChangelogPage(String feedId, String updated, String callable, List<Version> versions) {

    /** A version with its date, as ISO 8601 and RFC 3339 write it. */
    record Version(String number, String date, String updated, List<Entry> changes) {
    }

    /** An entry; {@code numbers} where a number changes for an equal request, {@code effect} may be empty. */
    record Entry(String id, String feedId, String kind, boolean numbers, String what, String effect) {

        private static Entry of(Changelog.Entry entry) {
            return new Entry(entry.id(), urn("changelog/" + entry.id()), inWords(entry.kind()), entry.kind() == Kind.NUMBER, entry.text(),
                    entry.effect());
        }
    }

    static ChangelogPage of() {
        List<Version> versions = Changelog.versions().stream().map(version -> new Version(version.number(), version.date().toString(),
                version.date() + "T00:00:00Z", version.entries().stream().map(Entry::of).toList())).toList();
        return new ChangelogPage(urn("changelog"), versions.get(0).updated(), String.join(" and ", Model.versions()), versions);
    }

    /** The id of something in a feed: a UUID of its name, as a URN (RFC 9562), which needs no name of a host. */
    private static String urn(String name) {
        return "urn:uuid:" + UUID.nameUUIDFromBytes(("brinebook/" + name).getBytes(StandardCharsets.UTF_8));
    }

    private static String inWords(Kind kind) {
        return switch (kind) {
            case NUMBER -> "Numbers change";
            case ADDED -> "Added";
            case CHANGED -> "Changed";
        };
    }
}
