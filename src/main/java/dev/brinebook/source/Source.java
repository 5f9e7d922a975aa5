// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.source;

import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.Locale;
import java.util.regex.Pattern;

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
public record Source(String key, Kind kind, String citation, String edition, String url, String takes) implements Localizable {

    private static final Pattern WORD = Pattern.compile("-(\\w)");
    private static final String UNDATED = "undated";

    /** How far a source can be trusted. */
    public enum Kind {
        DEFINITION, PUBLISHED, COMMON_PRACTICE, COMPUTED, FROM_MEMORY,
        /** Not calculated: given by the caller. */
        GIVEN
    }

    /** Whether it has no title of its own, but words of ours: practice of the trade, what was given, and our assumptions. */
    public boolean isInOurWords() {
        return kind == Kind.COMMON_PRACTICE || kind == Kind.GIVEN || kind == Kind.FROM_MEMORY && key.startsWith("OWN-");
    }

    /** Id of the words of a source that is in ours, such as {@code source.cpTanks}. */
    @Override
    public String textId() {
        return "source." + WORD.matcher(key.toLowerCase(Locale.ROOT)).replaceAll(start -> start.group(1).toUpperCase(Locale.ROOT));
    }

    /** How answers cite it: a publication by its title, anything else in the language of the reader. */
    public Message inWords() {
        Message title = isInOurWords() ? Message.of(this) : Message.verbatim(citation);
        return edition.equals(UNDATED) ? title : Message.of("pattern.inBrackets", title, edition);
    }

    /** The same in English, as the register has it. */
    public String cited() {
        return edition.equals(UNDATED) ? citation : citation + " (" + edition + ")";
    }
}
