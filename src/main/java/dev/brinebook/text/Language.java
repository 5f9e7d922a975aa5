// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.ibm.icu.text.PluralRules;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.ParseException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Locale.LanguageRange;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A language that people are answered in: one file of texts, {@code /text/<tag>.properties}, whose entries {@code language.*}
 * say how it writes numbers, dates and counts. English lists the others, so a new language is one file and its tag. Codes, names of
 * properties and citations are the same in each.
 *
 * <p>A variant for some regions, such as the Spanish of Mexico, names its parent; it holds what differs, and the rest is read
 * from its parent, in the words of {@code language.words} and with the signs of the variant in its numbers. A text that a
 * language lacks is said in English, which a test keeps from happening. A file is read when its language is first asked for.
 */
public final class Language {

    private static final String FILES = "/text/";
    private static final String OF_ITSELF = "language.";
    private static final Pattern DECIMALS = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern GROUPS = Pattern.compile("(?<=\\d)[\\u00a0\\u202f](?=\\d{3})");
    private static final String NO_BREAK_SPACE = "\u00a0";

    /** English of the United States, in which every text is. */
    public static final Language ENGLISH = read("en");
    /** Tags of every language and variant, in alphabetical order. */
    private static final List<String> TAGS = Stream.concat(Stream.of(ENGLISH.tag),
            Arrays.stream(ENGLISH.text("language.translations").split(" "))).sorted().toList();
    private static final Map<String, Language> KNOWN = new ConcurrentHashMap<>(Map.of(ENGLISH.tag, ENGLISH));

    private final String tag;
    private final Language parent;
    private final Map<String, String> texts;
    private final Map<String, TextPattern> patterns = new ConcurrentHashMap<>();
    private final char decimalSign;
    private final String groupSign;
    private final int groupedFromDigits;
    private final PluralRules plurals;
    private final DateTimeFormatter date;
    private final DateTimeFormatter time;
    private final Set<String> regions;
    private final WordPairs words;

    /** A language of {@code texts} by id; what they lack is taken from {@code parent}, which may be null. */
    Language(String tag, Map<String, String> texts, Language parent) {
        this.tag = tag;
        this.texts = Map.copyOf(texts);
        this.parent = parent;
        this.decimalSign = text("language.decimalSign").charAt(0);
        this.groupSign = text("language.groupSign");
        this.groupedFromDigits = Integer.parseInt(text("language.groupedFromDigits"));
        this.plurals = plurals(text("language.plurals"));
        Locale locale = Locale.forLanguageTag(tag);
        this.date = DateTimeFormatter.ofPattern(text("language.date"), locale);
        this.time = DateTimeFormatter.ofPattern(text("language.time"), locale);
        this.regions = texts.containsKey("language.regions") ? Set.of(texts.get("language.regions").split(" ")) : Set.of();
        this.words = new WordPairs(texts.getOrDefault("language.words", ""));
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
            for (LanguageRange range : LanguageRange.parse(acceptLanguage)) {
                Locale asked = Locale.forLanguageTag(range.getRange());
                if (range.getWeight() > 0 && TAGS.contains(asked.getLanguage())) {
                    return variants(asked.getLanguage()).filter(language -> language.regions.contains(asked.getCountry())).findFirst()
                            .orElseGet(() -> tagged(asked.getLanguage()));
                }
            }
            return ENGLISH;
        } catch (IllegalArgumentException unreadable) {
            return ENGLISH;
        }
    }

    private static Stream<Language> variants(String code) {
        return TAGS.stream().filter(tag -> tag.startsWith(code + "-")).map(Language::tagged);
    }

    /** The language or variant of one of {@link #tags}. */
    public static Language tagged(String tag) {
        Language known = KNOWN.get(tag);
        if (known == null) {
            KNOWN.putIfAbsent(tag, read(tag));
        }
        return KNOWN.get(tag);
    }

    /** Tags of every language and variant, in alphabetical order. */
    public static List<String> tags() {
        return List.copyOf(TAGS);
    }

    /** Every language and variant, in the order of their tags. */
    public static List<Language> all() {
        return TAGS.stream().map(Language::tagged).toList();
    }

    /** Tag by BCP 47, such as {@code es}. */
    public String tag() {
        return tag;
    }

    /** Its own texts by id, without what it takes from its parent. */
    public Map<String, String> texts() {
        return texts;
    }

    /** The text of an id as stored. */
    public String text(String id) {
        String text = texts.get(id);
        if (text != null) {
            return text;
        }
        if (parent == null) {
            throw new IllegalArgumentException("there is no text " + id);
        }
        String inherited = parent.text(id);
        return parent.parent == null || id.startsWith(OF_ITSELF) ? inherited : inWords(inherited);
    }

    /** A text of the language that this is a variant of, as the variant says it. */
    private String inWords(String inherited) {
        String said = words.in(inherited);
        return decimalSign == parent.decimalSign ? said
                : GROUPS.matcher(DECIMALS.matcher(said).replaceAll(String.valueOf(decimalSign))).replaceAll(groupSign);
    }

    /** Ids that begin with {@code prefix} and whose text is its own, or in words of its own. */
    public Set<String> ids(String prefix) {
        Set<String> ids = new TreeSet<>();
        texts.keySet().stream().filter(id -> id.startsWith(prefix)).forEach(ids::add);
        if (parent != null && parent.parent != null) {
            ENGLISH.texts.keySet().stream().filter(id -> id.startsWith(prefix))
                    .filter(id -> !text(id).equals(parent.text(id))).forEach(ids::add);
        }
        return ids;
    }

    TextPattern pattern(String id) {
        TextPattern known = patterns.get(id);
        return known != null ? known : patterns.computeIfAbsent(id, unknown -> TextPattern.parse(text(unknown)));
    }

    /** The number in plain notation, with the signs of the language. */
    public String number(BigDecimal number) {
        String plain = number.abs().toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        StringBuilder written = new StringBuilder(whole);
        if (whole.length() >= groupedFromDigits) {
            for (int place = whole.length() - 3; place > 0; place -= 3) {
                written.insert(place, groupSign);
            }
        }
        if (point >= 0) {
            written.append(decimalSign).append(plain, point + 1, plain.length());
        }
        return number.signum() < 0 ? "\u2212" + written : written.toString();
    }

    /** The number and its unit, on one line. */
    public String measure(Measure measure) {
        return number(measure.value()) + NO_BREAK_SPACE + unit(measure.unit());
    }

    /** How people write the unit of this symbol of the contract. */
    public String unit(String symbol) {
        for (Language language = this; language != null; language = language.parent) {
            String written = language.texts.get("unit." + symbol);
            if (written != null) {
                return written;
            }
        }
        return symbol;
    }

    public String date(LocalDate day) {
        return date.format(day);
    }

    public String time(LocalTime at) {
        return time.format(at);
    }

    /** The category of the plural rules of Unicode CLDR, such as {@code one} or {@code other}, for the count without its sign. */
    String pluralCategory(BigDecimal count) {
        return plurals.select(count.abs().doubleValue());
    }

    private static PluralRules plurals(String rules) {
        try {
            return PluralRules.parseDescription(rules);
        } catch (ParseException unreadable) {
            throw new IllegalStateException("plural rules: " + rules, unreadable);
        }
    }

    private static Language read(String tag) {
        Properties file = new Properties();
        try (InputStream bytes = Language.class.getResourceAsStream(FILES + tag + ".properties");
                Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
            file.load(text);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        Map<String, String> texts = new HashMap<>();
        file.forEach((id, words) -> texts.put((String) id, (String) words));
        return new Language(tag, texts, tag.equals("en") ? null : tagged(texts.getOrDefault("language.parent", "en")));
    }

    @Override
    public String toString() {
        return tag;
    }
}
