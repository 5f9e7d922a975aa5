// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.brinebook.api.WireNames;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Words that would stay English in every other language. An answer is written in a language that has no Latin letter; what
 * Latin words are left were never said as a message, and must be names, codes or units.
 */
public final class ForeignWords {

    private static final Pattern LETTER = Pattern.compile("\\p{L}");

    /** The language without Latin letters. */
    public static final Language WITHOUT_LATIN = withoutLatin();

    private static final Pattern WORD = Pattern.compile("[A-Z]*[a-z][A-Za-z]+");

    /** What is written the same in every language: names of properties, of constants on the wire and of units. */
    private static final Set<String> NAMES = names();

    /** Citations, given values and entries of the changelog are repeated unchanged. */
    private static final Set<String> SAME = Set.of("source", "pointer", "received", "changes");

    private ForeignWords() {
    }

    /**
     * Texts of {@code answer} with Latin words that are neither such names nor words of {@code request}. A text of one word is
     * a code, one in capitals the code of a currency or source; citations are left out.
     */
    public static Set<String> in(JsonNode answer, JsonNode request) {
        Set<String> given = new TreeSet<>(NAMES);
        addWords(request, given);
        Set<String> found = new TreeSet<>();
        walk(answer, given, found);
        return found;
    }

    private static void walk(JsonNode value, Set<String> given, Set<String> found) {
        if (value.isTextual()) {
            boolean foreign = WORD.matcher(value.asText()).results().map(MatchResult::group)
                    .anyMatch(word -> word.length() > 2 && !given.contains(word));
            if (foreign && value.asText().contains(" ")) {
                found.add(value.asText());
            }
        } else if (value.isArray()) {
            value.forEach(element -> walk(element, given, found));
        } else {
            value.properties().stream().filter(part -> !SAME.contains(part.getKey()))
                    .forEach(part -> walk(part.getValue(), given, found));
        }
    }

    private static void addWords(JsonNode value, Set<String> words) {
        if (value.isTextual()) {
            WORD.matcher(value.asText()).results().map(MatchResult::group).forEach(words::add);
        } else {
            value.forEach(part -> addWords(part, words));
        }
    }

    private static Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook")) {
            if (type.isRecord()) {
                Arrays.stream(type.reflect().getRecordComponents()).map(RecordComponent::getName).forEach(names::add);
            } else if (type.isEnum() && type.reflect().isEnum()) {
                WireNames.all(type.reflect()).stream().flatMap(name -> WORD.matcher(name).results()).map(MatchResult::group)
                        .forEach(names::add);
            }
        }
        Language.ENGLISH.texts().forEach((id, text) -> {
            if (id.startsWith("unit.")) {
                WORD.matcher(text).results().map(MatchResult::group).forEach(names::add);
            }
        });
        return names;
    }

    private static Language withoutLatin() {
        Map<String, String> texts = new TreeMap<>(Language.ENGLISH.texts());
        texts.replaceAll((id, text) -> id.startsWith("language.") || id.startsWith("unit.") ? text
                : Patterns.changeWords(text, words -> LETTER.matcher(words).replaceAll("\u0436")));
        texts.put("language.date", "d.MM.uuuu");
        return new Language("zxx", texts, null);
    }
}
