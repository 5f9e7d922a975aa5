package dev.brinebook.api;

import dev.brinebook.source.Table;
import dev.brinebook.wording.Wording;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Locale.LanguageRange;
import java.util.Map;

/**
 * A language that people are answered in. Codes, names of properties and citations are the same in each.
 *
 * @param code language by ISO 639, such as {@code es}
 * @param templates each template of the code in this language; none for English
 * @param decimalSign what stands before the decimals, which differs between countries of one language
 */
public record Language(String code, Map<String, String> templates, char decimalSign) implements Wording {

    /** What is spoken when the caller asks for none of the others. */
    public static final Language ENGLISH = new Language("en", Map.of(), '.');

    private static final Map<String, Map<String, String>> OTHERS = Map.of("es", read("es"), "fr", read("fr"), "de", read("de"));

    /** Codes of all languages, English first. */
    public static final List<String> CODES = List.of("en", "es", "fr", "de");

    /**
     * The first language of an {@code Accept-Language} header (RFC 9110, section 12.5.4) that is spoken here, by weight;
     * English when there is none, or the header cannot be read.
     */
    public static Language of(String acceptLanguage) {
        if (acceptLanguage == null || acceptLanguage.isBlank()) {
            return ENGLISH;
        }
        try {
            return LanguageRange.parse(acceptLanguage).stream().filter(range -> range.getWeight() > 0)
                    .map(range -> Locale.forLanguageTag(range.getRange())).filter(locale -> CODES.contains(locale.getLanguage()))
                    .findFirst().map(Language::of).orElse(ENGLISH);
        } catch (IllegalArgumentException unreadable) {
            return ENGLISH;
        }
    }

    private static Language of(Locale locale) {
        String code = locale.getLanguage();
        if (code.equals(ENGLISH.code)) {
            return ENGLISH;
        }
        Locale place = new Locale.Builder().setLanguage(code).setRegion(locale.getCountry()).build();
        return new Language(code, OTHERS.get(code), DecimalFormatSymbols.getInstance(place).getDecimalSeparator());
    }

    @Override
    public String template(String english) {
        return templates.getOrDefault(english, english);
    }

    @Override
    public String number(BigDecimal number) {
        return number.toPlainString().replace('.', decimalSign);
    }

    /** In French nothing is one, too: 0 jour. */
    @Override
    public boolean isOne(BigDecimal count) {
        return count.compareTo(BigDecimal.ONE) == 0
                || code.equals("fr") && count.signum() >= 0 && count.compareTo(BigDecimal.valueOf(2)) < 0;
    }

    private static Map<String, String> read(String code) {
        Map<String, String> templates = new LinkedHashMap<>();
        for (String[] row : Table.read("/wording/" + code + ".csv", '|', 2)) {
            if (templates.put(row[0], row[1]) != null) {
                throw new IllegalStateException("two rows of " + code + " say: " + row[0]);
            }
        }
        return Collections.unmodifiableMap(templates);
    }
}
