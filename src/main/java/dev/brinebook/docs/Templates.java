// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/** Fills the templates of pages. Every value is escaped, and a template that asks for what its page lacks fails. */
final class Templates {

    private static final Map<String, Template> COMPILED = new ConcurrentHashMap<>();
    private static final Mustache.Compiler COMPILER = Mustache.compiler().withLoader(Templates::open).strictSections(true)
            .emptyStringIsFalse(true);
    /** Programs are no HTML; the page that shows one escapes it. */
    private static final Mustache.Compiler PROGRAMS = COMPILER.escapeHTML(false);

    /** A page on the way from the first to this one. */
    record Crumb(String path, String name) {
    }

    /** What all pages have around their main part, which is HTML already. */
    private record Frame(String title, List<Crumb> trail, String main) {
    }

    private Templates() {
    }

    /**
     * A whole page.
     *
     * @param title title of the page
     * @param trail pages above it
     * @param name name of the template of its main part
     * @param content what that template asks for, by the names of its components
     */
    static byte[] page(String title, List<Crumb> trail, String name, Record content) {
        String main = template(name).execute(content);
        return whole("frame", new Frame(title, trail, main));
    }

    /** A whole document, without what pages have around their main part. */
    static byte[] whole(String name, Record content) {
        return template(name).execute(content).getBytes(StandardCharsets.UTF_8);
    }

    /** A text as the content of an element, where quotes mean nothing; for {@code {{{…}}}}, as programs are full of quotes. */
    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A program in a language, from what its template asks for. */
    static String program(String language, Record content) {
        return COMPILED.computeIfAbsent("program/" + language, key -> PROGRAMS.compile(open(key))).execute(content);
    }

    /** A text that is no page, all of it in its template. */
    static byte[] text(String name, Record content) {
        return template(name).execute(content).getBytes(StandardCharsets.UTF_8);
    }

    private static Template template(String name) {
        return COMPILED.computeIfAbsent(name, key -> COMPILER.compile(open(key)));
    }

    private static Reader open(String name) {
        String file = name + ".mustache";
        return new InputStreamReader(Objects.requireNonNull(Templates.class.getResourceAsStream(file), file),
                StandardCharsets.UTF_8);
    }
}
