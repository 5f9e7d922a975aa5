// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.brinebook.api.WireNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Whether a summary can be read to a customer. Source of the limits: ISO 24495-1:2023, plain language; the digits by common practice. */
public final class Summaries {

    private static final int MOST_WORDS_OF_FIRST_SENTENCE = 20;
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?!])\\s+(?=[\\p{Lu}\"])");
    /** A number with more than three decimals, but of three digits after zeros, or with two where the whole part has two or three. */
    private static final Pattern TOO_EXACT = Pattern.compile("(?<![\\w.,])(?!0\\.0+[1-9]\\d{0,2}(?!\\d))\\d[\\d,]*\\.\\d{4,}"
            + "|(?<![\\w.,])\\d{2,3}\\.\\d{2,}");
    private static final Pattern MONEY_WITHOUT_CURRENCY = Pattern.compile("(?:costs?|saves?) \\d[\\d,.]*+(?!\\u00a0)");
    private static final Pattern WIRE_NAME = wireNames();

    private Summaries() {
    }

    /** What is wrong with an English summary; names and numbers that the request gave are left out of it first. */
    public static List<String> faults(String summary, Set<String> given) {
        String said = summary;
        for (String name : given) {
            boolean number = Character.isDigit(name.charAt(0));
            said = number ? said.replaceAll("(?<![\\w.,])" + Pattern.quote(name) + "(?![.,]?\\d)", "1") : said.replace(name, "A name");
        }
        List<String> faults = new ArrayList<>();
        String first = SENTENCE_END.split(said)[0];
        check(faults, !said.matches("(?s)[\\p{Lu}\\d\"].*"), "does not begin as a sentence");
        check(faults, !said.matches("(?s).*[.?!]"), "does not end as a sentence");
        check(faults, first.split("\\s+").length > MOST_WORDS_OF_FIRST_SENTENCE, "has a long first sentence");
        check(faults, said.contains(";") || said.contains("..") || said.contains("  ") || said.contains("null") || said.contains("{"),
                "has odd signs");
        check(faults, TOO_EXACT.matcher(said).find(), "has a number with too many digits");
        check(faults, MONEY_WITHOUT_CURRENCY.matcher(said).find(), "has money without its currency");
        check(faults, WIRE_NAME.matcher(said).find(), "has a name of the wire");
        return faults.stream().map(fault -> fault + ": " + summary).toList();
    }

    private static void check(List<String> faults, boolean wrong, String fault) {
        if (wrong) {
            faults.add(fault);
        }
    }

    private static Pattern wireNames() {
        Set<String> names = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("dev.brinebook").stream().filter(type -> type.isEnum() && type.reflect().isEnum())
                .flatMap(type -> WireNames.all(type.reflect()).stream()).filter(name -> name.matches("[a-z]{2,}[A-Z]\\w*"))
                .filter(name -> !name.equals("kPa")).collect(Collectors.toSet());
        return Pattern.compile("(?<!\\w)(?:" + String.join("|", names) + ")(?!\\w)");
    }
}
