package dev.brinebook.sheet;

import com.samskivert.mustache.Mustache;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.wording.Message;
import dev.brinebook.wording.Worded;
import dev.brinebook.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A page to look at and to print: XHTML that holds its own style, so that it can be kept and sent on, and asks nobody for
 * anything. Numbers stand in it as the answer has them; only the sign before decimals is the language's.
 */
public final class Sheet {

    /** For a browser: the styles of a sheet, known by their hashes, and nothing else. */
    public static final String POLICY = policy();

    private static final String SCREEN = read("screen.css");
    private static final String PRINT = read("print.css");

    /** What the page asks for, beside its content. */
    private record Frame(String language, String screen, String print, String paper, Object content) {
    }

    private Sheet() {
    }

    /**
     * The page in a language.
     *
     * @param name name of the template
     * @param paper what it is printed on
     * @param content what the template asks for
     */
    public static String xhtml(String name, Paper paper, Record content, Wording wording) {
        return Mustache.compiler().strictSections(true).withFormatter(value -> text(value, wording)).compile(read(name + ".mustache"))
                .execute(new Frame(wording.code(), SCREEN, PRINT, paper.style(), content));
    }

    /** Numbers to four significant digits, as in sentences, and money to the cent: a person reads them. */
    private static String text(Object value, Wording wording) {
        if (value instanceof Quantity<?> quantity) {
            return Text.of(quantity).in(wording);
        }
        if (value instanceof BigDecimal number) {
            return wording.number(Text.number(number.doubleValue()));
        }
        if (value instanceof Money money) {
            return money.inWords().in(wording);
        }
        if (value instanceof Worded worded) {
            return Message.saying(worded).in(wording);
        }
        if (value instanceof Message message) {
            return message.in(wording);
        }
        return value.toString();
    }

    private static String policy() {
        String styles = Stream.concat(Stream.of(read("screen.css"), read("print.css")), Arrays.stream(Paper.values()).map(Paper::style))
                .map(style -> "'sha256-" + Base64.getEncoder().encodeToString(digest(style)) + "'").collect(Collectors.joining(" "));
        return "default-src 'none'; style-src " + styles + "; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
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
