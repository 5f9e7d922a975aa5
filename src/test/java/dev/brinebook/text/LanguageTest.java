// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which language is chosen, and how it writes numbers, dates and counts. */
class LanguageTest {

    @ParameterizedTest
    @CsvSource({"'', en", "*, en", "en-US, en", "en-GB, en", "'es', es", "es-ES, es", "es-AR, es-419", "es-MX, es-MX",
            "'pt, fr;q=0.5', fr", "fr-CA, fr", "'de;q=0.4, fr;q=0.9', fr", "'pt-BR', en", "'de;q=0', en", "'not a header;;', en",
            "'en, de', en", "'de-AT, en;q=0.9', de"})
    void speaksTheLanguageOfMostWeight(String header, String tag) {
        assertEquals(tag, Language.of(header).tag());
    }

    /**
     * Common practice in English, French and German (DIN 5008, ISO 80000-1: a thin space between groups of three); in Spanish
     * the Ortografía of the Real Academia Española, 2010: both decimal signs by region, no space in four digits.
     */
    @ParameterizedTest
    @CsvSource({"en, 1234.5, '1,234.5'", "en, -20.20, '−20.20'", "es, 1234.5, '1234,5'", "es-MX, 1234.5, '1234.5'",
            "es-AR, 12345.6, '12\u202f345,6'", "fr, 12345.6, '12\u202f345,6'", "de, 12345.6, '12\u202f345,6'", "de, 999, 999"})
    void writesNumbersAsTheLanguageDoes(String header, BigDecimal number, String written) {
        assertEquals(written, Language.of(header).number(number));
    }

    /** The symbol of the grain is read as grams in Europe; the German degree has its sign. Common practice. */
    @ParameterizedTest
    @CsvSource({"en, 33200, gr, '33,200\u00a0grains'", "de, 33200, gr, '33\u202f200\u00a0Grains'",
            "fr, 48000, gr, '48\u202f000\u00a0grains'",
            "es, 48000, gr, '48\u202f000\u00a0granos'", "de, 7, dH, '7\u00a0°dH'", "de, 33, in, '33\u00a0Zoll'", "en, 33, in, '33\u00a0in'",
            "fr, 5, gpg, '5\u00a0gpg'"})
    void writesUnitsAsTheLanguageDoes(String header, BigDecimal value, String unit, String written) {
        assertEquals(written, Language.of(header).measure(new Measure(value, unit)));
    }

    /** Common practice; in French, German and Spanish the day comes before the month. */
    @ParameterizedTest
    @CsvSource({"en, 'March 2, 2026', 2:00 AM", "de, '2. März 2026', 02:00 Uhr", "fr, 2 mars 2026, 2 h 00", "es, 2 de marzo de 2026, 2:00"})
    void writesDatesAndTimesAsTheLanguageDoes(String header, String date, String time) {
        assertEquals(date, Language.of(header).date(LocalDate.of(2026, 3, 2)));
        assertEquals(time, Language.of(header).time(LocalTime.of(2, 0)));
    }

    /** Unicode CLDR 48, plural rules. */
    @ParameterizedTest
    @CsvSource({"en, 1, one", "en, 0, other", "en, 1.5, other", "fr, 0, one", "fr, 1.5, one", "fr, 2, other", "de, 1, one",
            "de, 0, other", "es, 0, other", "es, 1, one", "es, 1.5, other"})
    void knowsWhatIsSpokenOfInTheSingular(String header, BigDecimal count, String category) {
        assertEquals(category, Language.of(header).pluralCategory(count));
    }
}
