package dev.brinebook.api;

import dev.brinebook.source.Table;
import dev.brinebook.wording.Wording;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Locale.LanguageRange;
import java.util.Map;

/**
 * A language that people are answered in. Codes, names of properties and citations are the same in each.
 *
 * <p>Thousands have no sign in any, so that no number can be read wrong. In Spanish, where both signs before decimals are in
 * use, it is the point that [RAE-2010] recommends and North America writes.
 */
public enum Language implements Wording {
    ENGLISH("en", '.'), SPANISH("es", '.'), FRENCH("fr", ','), GERMAN("de", ',');

    private final String code;
    private final char decimalSign;
    private final Map<String, String> templates;

    Language(String code, char decimalSign) {
        this.code = code;
        this.decimalSign = decimalSign;
        this.templates = code.equals("en") ? Map.of() : read(code);
    }

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
                    .map(range -> Locale.forLanguageTag(range.getRange()).getLanguage())
                    .flatMap(spoken -> Arrays.stream(values()).filter(language -> language.code.equals(spoken)))
                    .findFirst().orElse(ENGLISH);
        } catch (IllegalArgumentException unreadable) {
            return ENGLISH;
        }
    }

    @Override
    public String code() {
        return code;
    }

    /** Each template of the code in this language; none in English, which the code is written in. */
    public Map<String, String> templates() {
        return templates;
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
                || this == FRENCH && count.signum() >= 0 && count.compareTo(BigDecimal.valueOf(2)) < 0;
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
