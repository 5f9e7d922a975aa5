// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.brinebook.api.WireNames;
import dev.brinebook.source.Table;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language has every text, with the slots, numbers and terms it must have. */
class TextStoreTest {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)*");
    private static final List<BigDecimal> COUNTS = Stream.of("0", "1", "1.5", "2", "5", "1000").map(BigDecimal::new).toList();
    /** What a language says of itself, and units, which a language may leave as they are. */
    private static final Pattern OF_ITSELF = Pattern.compile("(language|unit)\\..*");

    /** Units, which are written alike. */
    private static final Set<String> NO_NAMES = Set.of("kPa", "dH", "fH", "pH");
    private static final Pattern WIRE_NAMES = wireNames();
    private static Set<String> ids;

    private static Pattern wireNames() {
        Set<String> names = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook")) {
            if (type.isEnum() && type.reflect().isEnum()) {
                names.addAll(WireNames.all(type.reflect()));
            }
        }
        names.removeIf(each -> !each.matches("[a-z]+[A-Z]\\w*") || NO_NAMES.contains(each));
        return Pattern.compile("(?<![`\\w])(" + String.join("|", names) + ")(?![`\\w])");
    }

    private static synchronized Set<String> ids() throws IOException {
        if (ids == null) {
            ids = TextIds.used();
        }
        return ids;
    }

    static List<Language> languages() {
        return Language.all();
    }

    static List<Language> complete() {
        return Language.all().stream().filter(language -> language.texts().size() > 500).toList();
    }

    static List<Language> translations() {
        return Language.all().stream().filter(language -> language != Language.ENGLISH).toList();
    }

    @Test
    void seesTheLanguages() {
        assertTrue(complete().stream().map(Language::tag).toList().containsAll(List.of("de", "en", "es", "fr")), "" + complete());
    }

    /** A file that English does not list is read by nobody. */
    @Test
    void readsEveryFileOfTexts() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src", "main", "resources", "text"))) {
            assertEquals(files.map(file -> file.getFileName().toString().replace(".properties", "")).sorted().toList(),
                    Language.all().stream().map(Language::tag).toList());
        }
    }

    @Test
    void everyIdIsOneConstantText() throws IOException {
        List<String> unknown = new ArrayList<>();
        assertTrue(TextIds.ofCalls(unknown).size() > 500);
        assertEquals(List.of(), unknown);
    }

    @ParameterizedTest
    @MethodSource("complete")
    void hasTheTextOfEveryIdAndNoOther(Language language) throws IOException {
        Set<String> used = ids();
        Set<String> held = language.texts().keySet().stream().filter(id -> !OF_ITSELF.matcher(id).matches())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), without(used, held), "missing in " + language);
        assertEquals(Set.of(), without(held, used), "used by nothing in " + language);
    }

    private static Set<String> without(Set<String> from, Set<String> taken) {
        Set<String> rest = new TreeSet<>(from);
        rest.removeAll(taken);
        return rest;
    }

    /** Every text of a language or variant by its id, as it is said. */
    private static Map<String, String> all(Language language) {
        return Language.ENGLISH.texts().keySet().stream().collect(Collectors.toMap(Function.identity(), language::text,
                (one, same) -> one, TreeMap::new));
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyBranchOfEveryTextCanBeWritten(Language language) {
        all(language).forEach((id, text) -> {
            if (!OF_ITSELF.matcher(id).matches()) {
                variants(text).forEach(message -> assertTrue(!message.of(id).in(language).isBlank(), id));
            }
        });
    }

    /** Values for the slots of a text that reach each of its branches. */
    private static List<Values> variants(String text) {
        Map<String, Set<String>> choices = Patterns.choices(text);
        int slots = Patterns.slots(text).stream().filter(slot -> slot.matches("\\d")).mapToInt(Integer::parseInt).max().orElse(-1) + 1;
        List<Values> variants = new ArrayList<>(List.of(new Values(new Object[slots], false)));
        variants.get(0).fill("text");
        choices.forEach((slot, codes) -> {
            List<Values> more = new ArrayList<>();
            for (Values values : variants) {
                for (Object code : codes.contains("#") ? COUNTS : codes) {
                    more.add(slot.equals("units") ? values.metric(code.equals("metric") || code.equals("other"))
                            : values.with(Integer.parseInt(slot), code));
                }
            }
            variants.addAll(more);
        });
        return variants.stream().filter(values -> choices.entrySet().stream().allMatch(choice -> choice.getKey().equals("units")
                || !choice.getValue().contains("#") || values.slots[Integer.parseInt(choice.getKey())] instanceof Number)).toList();
    }

    private record Values(Object[] slots, boolean metric) {

        void fill(Object value) {
            Arrays.fill(slots, value);
        }

        Values with(int slot, Object value) {
            Object[] changed = slots.clone();
            changed[slot] = value;
            return new Values(changed, metric);
        }

        Values metric(boolean chosen) {
            return new Values(slots, chosen);
        }

        Message of(String id) {
            return Message.of(id, slots).inMetricUnits(metric);
        }
    }

    @ParameterizedTest
    @MethodSource("translations")
    void hasTheSlotsBranchesAndNumbersOfTheEnglish(Language language) {
        List<String> wrong = new ArrayList<>();
        all(language).forEach((id, text) -> {
            String english = Language.ENGLISH.texts().get(id);
            if (OF_ITSELF.matcher(id).matches() || english == null) {
                return;
            }
            Set<String> free = Patterns.choices(text).keySet();
            boolean same = Patterns.slots(text).equals(Patterns.slots(english))
                    && selects(text).entrySet().containsAll(selects(english).entrySet());
            if (!same || text.isBlank() || !numbers(text, language).equals(numbers(english, Language.ENGLISH))) {
                wrong.add(id + ": " + english + " | " + text + (free.isEmpty() ? "" : " " + free));
            }
        });
        assertEquals(List.of(), wrong);
    }

    private static Map<String, Set<String>> selects(String text) {
        Map<String, Set<String>> selects = new TreeMap<>(Patterns.choices(text));
        selects.values().removeIf(codes -> codes.contains("#"));
        return selects;
    }

    /** Numbers written in a text, each once, by their digits. */
    private static Set<String> numbers(String text, Language language) {
        StringBuilder words = new StringBuilder();
        Patterns.changeWords(text, part -> {
            words.append(part).append(' ');
            return part;
        });
        String ungrouped = words.toString().replaceAll("(?<=\\d)[\\u00a0\\u202f](?=\\d{3})", "");
        return NUMBER.matcher(ungrouped).results().map(MatchResult::group).map(number -> number.replaceAll("[.,]",
                "").replaceFirst("^0+(?=\\d)", ""))
                .filter(number -> !number.equals("0"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Terms that a language must not use, by the glossary of the trade: {@code glossary.csv}. */
    @ParameterizedTest
    @MethodSource("languages")
    void keepsToTheGlossary(Language language) {
        List<String> wrong = new ArrayList<>();
        int rows = 0;
        for (String[] row : Table.read("/dev/brinebook/text/glossary.csv", ';', 4)) {
            if (!row[0].equals(language.tag()) && !(row[0].equals("es-419") && language.tag().equals("es-MX"))) {
                continue;
            }
            rows++;
            Pattern refused = Pattern.compile(row[1], Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
            all(language).forEach((id, text) -> {
                if (!OF_ITSELF.matcher(id).matches() && refused.matcher(text).find()) {
                    wrong.add(id + ": '" + row[1] + "', say " + row[2] + ": " + text);
                }
            });
        }
        assertTrue(rows > 0, "the glossary has no row for " + language);
        assertEquals(List.of(), wrong);
    }

    /** A sentence begins with a capital and ends with a sign; a formula does neither. */
    @ParameterizedTest
    @MethodSource("complete")
    void sentencesAreWritten(Language language) {
        List<String> wrong = new ArrayList<>();
        language.texts().forEach((id, text) -> {
            boolean sentence = text.matches("(?s).*[.!?]$") && text.contains(" ");
            if (sentence && !OF_ITSELF.matcher(id).matches() && text.matches("\\p{Ll}.*") && !id.startsWith("formula.")
                    && !id.startsWith("assumed.")) {
                wrong.add(id + ": " + text);
            }
            if (!text.strip().equals(text) || text.contains("  ")) {
                wrong.add(id + ": blanks: " + text);
            }
        });
        assertEquals(List.of(), wrong);
    }

    /** Common practice of French typesetting. */
    @Test
    void frenchIsSetAsInFrance() {
        List<String> wrong = Language.of("fr").texts().entrySet().stream().filter(entry -> !OF_ITSELF.matcher(entry.getKey()).matches())
                .filter(entry -> entry.getValue().contains("'") && !entry.getValue().contains("''")
                        || words(entry.getValue()).matches("(?s).*(?<![\\u00a0\\u202f\\d/:])[;?!»].*|.*(?<=\\p{L})[:](?= ).*|.* [:;?!%].*"))
                .map(Object::toString).toList();
        assertEquals(List.of(), wrong);
    }

    private static String words(String text) {
        StringBuilder words = new StringBuilder();
        Patterns.changeWords(text, part -> {
            words.append(part);
            return part;
        });
        return words.toString().replaceAll("`[^`]*`", "");
    }

    /** What goes over the wire as a name is no word for people. */
    @ParameterizedTest
    @MethodSource("complete")
    void noTextForPeopleHoldsANameOfTheWire(Language language) {
        assertEquals(List.of(), language.texts().entrySet().stream().filter(entry -> !OF_ITSELF.matcher(entry.getKey()).matches())
                .filter(entry -> WIRE_NAMES.matcher(words(entry.getValue())).find()).map(Object::toString).toList());
    }

    /** A pair changes nothing but its own word, so only words of one gender and number may be a pair. From memory. */
    @Test
    void variantsSayTheirOwnWords() {
        Language latinAmerica = Language.of("es-AR");
        assertEquals("El ablandador no desinfecta.", new WordPairs("descalcificador>ablandador").in("El descalcificador no desinfecta."));
        assertEquals("Costo y costos", new WordPairs("coste>costo; costes>costos").in("Coste y costes"));
        assertEquals("el retrolavado", new WordPairs("lavado>enjuague").in("el retrolavado"));
        assertTrue(latinAmerica.text("softener.standardTank").contains("tanque"));
        assertTrue(Language.of("es-MX").text("caution.ironStains").contains("0.3"));
        assertTrue(Language.of("es-MX").ids("").size() > 10 && latinAmerica.ids("").size() > 300);
        assertTrue(latinAmerica.texts().entrySet().stream().noneMatch(own -> !OF_ITSELF.matcher(own.getKey()).matches()
                && new WordPairs(latinAmerica.texts().get("language.words")).in(Language.of("es").text(own.getKey()))
                .equals(own.getValue())), "a text is written out that the pairs give");
    }

    /** A number and its unit stay on one line. Source: SI Brochure, 9th edition, 5.4.3; a no-break space by common practice. */
    @Test
    void keepsUnitsBesideTheirNumbers() {
        Pattern parted = Pattern.compile("[\\d}] (?:%|°F|°C|gal|lb|mg/L|gpg|gpm|kPa|psi|eq/L|L/min)(?!\\w)");
        for (Language language : Language.all()) {
            Set<String> found = all(language).entrySet().stream().filter(text -> parted.matcher(text.getValue()).find())
                    .map(Map.Entry::getKey).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of(), found, language.tag());
        }
        assertTrue(parted.matcher("{0} %").find(), "it finds one");
    }
}
