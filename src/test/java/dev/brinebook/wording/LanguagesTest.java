package dev.brinebook.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Language;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every language says all that the code says, and nothing else. */
class LanguagesTest {

    private static final Pattern PLACE = Pattern.compile("\\{\\d}");
    /** Numbers of a sentence; a decimal sign may differ. */
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr", "de"})
    void everyTemplateOfTheCodeStandsInEachLanguageAndNoOther(String code) throws IOException {
        Set<String> spoken = new TreeSet<>(Language.of(code).templates().keySet());
        Set<String> missing = Templates.all();
        assertTrue(missing.size() > 500, "it saw " + missing.size());
        Set<String> unused = new TreeSet<>(spoken);
        unused.removeAll(missing);
        missing.removeAll(spoken);
        assertEquals(Set.of(), missing, "missing in " + code);
        assertEquals(Set.of(), unused, "said by nothing in " + code);
    }

    /** What is said to people is known before it is said. */
    @Test
    void everyTemplateIsOneConstantText() throws IOException {
        List<String> unknown = new ArrayList<>();
        Templates.ofCalls(unknown);
        assertEquals(List.of(), unknown);
    }

    @Test
    void noTemplateBeginsOrEndsWithABlankOrHoldsTheSeparator() throws IOException {
        assertEquals(List.of(), Templates.all().stream().filter(template -> !template.strip().equals(template)
                || template.contains("|") || template.startsWith("#")).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr", "de"})
    void everyTranslationHasTheSamePlacesAndNumbers(String code) {
        List<String> wrong = new ArrayList<>();
        Language.of(code).templates().forEach((english, other) -> {
            boolean same = all(PLACE, english).equals(all(PLACE, other))
                    && all(NUMBER, english.replace(",", ""))
                            .equals(all(NUMBER, other.replaceAll("(?<=\\d)[\\u00a0\\u202f ](?=\\d{3})", "")));
            if (!same || other.isBlank() || other.equals(english) && english.matches(".*[a-z]{4} .*[a-z]{4}.*")) {
                wrong.add(english + " | " + other);
            }
        });
        assertEquals(List.of(), wrong);
    }

    private static List<String> all(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).sorted().toList();
    }

    @ParameterizedTest
    @CsvSource({"'', en", "*, en", "en-US, en", "'es', es", "es-MX, es", "'pt, fr;q=0.5', fr", "'de;q=0.4, fr;q=0.9', fr",
            "'pt-BR', en", "'de;q=0', en", "'not a header;;', en", "'en, de', en", "'de-AT, en;q=0.9', de"})
    void speaksTheLanguageOfMostWeight(String header, String code) {
        assertEquals(code, Language.of(header).code());
    }

    /** Common practice in French and German; in Spanish the Ortografía of the Real Academia Española, 2010. */
    @ParameterizedTest
    @CsvSource({"en, 1234.5", "es, 1234.5", "es-MX, 1234.5", "fr, '1234,5'", "de, '1234,5'"})
    void writesDecimalsAsTheLanguageDoes(String header, String written) {
        assertEquals(written, Language.of(header).number(new BigDecimal("1234.5")));
    }

    @ParameterizedTest
    @CsvSource({"en, 1, true", "en, 0, false", "en, 1.5, false", "fr, 0, true", "fr, 1.5, true", "fr, 2, false", "de, 1, true",
            "es, 0, false"})
    void knowsWhatIsSpokenOfInTheSingular(String code, BigDecimal count, boolean one) {
        assertEquals(one, Language.of(code).isOne(count));
    }
}
