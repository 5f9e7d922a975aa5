// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

/**
 * A publication, or a fact of the trade, that a number rests on.
 *
 * @param key how the code cites it, in square brackets
 * @param kind how far it can be trusted
 * @param citation what it is, in words
 * @param edition year or edition, or {@code undated}
 * @param url page or DOI of the work, null where none is known
 * @param takes what Brinebook takes from it
 */
public record Source(String key, Kind kind, String citation, String edition, String url, String takes) {

    /** How far a source can be trusted. */
    public enum Kind {
        DEFINITION, PUBLISHED, COMMON_PRACTICE, COMPUTED, FROM_MEMORY,
        /** Not calculated: given by the caller. */
        GIVEN
    }

    /** How answers cite it. */
    public String cited() {
        return edition.equals("undated") ? citation : citation + " (" + edition + ")";
    }
}
