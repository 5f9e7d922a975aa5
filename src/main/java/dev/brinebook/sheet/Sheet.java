// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Language;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A page to look at and to print: XHTML that holds its own style, so that it can be kept and sent on, and asks nobody for
 * anything. Numbers are those of the answer; only the decimal separator depends on the language.
 */
public final class Sheet {

    private static final String SCREEN = read("screen.css");
    private static final String PRINT = read("print.css");
    /** By name and language, as each is read once. */
    private static final Map<String, Template> TEMPLATES = new ConcurrentHashMap<>();

    /** Made for the first sheet that is shown, which a start does not wait for. */
    private static final class Policy {

        private static final String STYLES_ALONE = policyOf(Stream.concat(Stream.of(SCREEN, PRINT),
                Arrays.stream(PageSize.values()).map(PageSize::style)));
    }

    /** Values for the page, other than its content. */
    private record Frame(String language, String screen, String print, String paper, Object content) {
    }

    private Sheet() {
    }

    /** For a browser: the styles of a sheet, known by their hashes, and nothing else. */
    public static String policy() {
        return Policy.STYLES_ALONE;
    }

    /**
     * The page in a language.
     *
     * @param name name of the template
     * @param paper what it is printed on
     * @param content values for the template
     */
    public static String xhtml(String name, PageSize paper, Record content, Language language) {
        return TEMPLATES.computeIfAbsent(name + " " + language, key -> Mustache.compiler().strictSections(true)
                .withLoader(part -> new StringReader(read(part + ".mustache"))).withFormatter(value -> text(value, language))
                .compile(read(name + ".mustache"))).execute(new Frame(language.tag(), SCREEN, PRINT, paper.style(), content));
    }

    /** Numbers rounded as in sentences: a person reads them. What must not be rounded comes as a message. */
    private static String text(Object value, Language language) {
        if (value instanceof Quantity<?> quantity) {
            return Text.rounded(quantity).in(language);
        }
        if (value instanceof BigDecimal number) {
            double size = number.abs().doubleValue();
            return language.number(size < 100 ? Text.tenths(number.doubleValue()) : Text.whole(number.doubleValue()));
        }
        if (value instanceof Integer whole) {
            return language.number(BigDecimal.valueOf(whole));
        }
        if (value instanceof Money money) {
            return Text.rounded(money.value().doubleValue(), money.currency()).in(language);
        }
        if (value instanceof Localizable worded) {
            return Message.of(worded).in(language);
        }
        if (value instanceof Message message) {
            return message.in(language);
        }
        return value.toString();
    }

    private static String policyOf(Stream<String> styles) {
        String hashes = styles.map(style -> "'sha256-" + Base64.getEncoder().encodeToString(digest(style)) + "'")
                .collect(Collectors.joining(" "));
        return "default-src 'none'; style-src " + hashes + "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    }

    private static byte[] digest(String style) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String read(String file) {
        try (InputStream stream = Objects.requireNonNull(Sheet.class.getResourceAsStream(file), file)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
