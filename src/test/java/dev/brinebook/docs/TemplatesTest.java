// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.samskivert.mustache.MustacheException;
import dev.brinebook.docs.ChangelogPage.Entry;
import dev.brinebook.docs.ChangelogPage.Version;
import dev.brinebook.docs.Templates.Crumb;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** Nothing that is filled in can become markup. */
class TemplatesTest {

    private static final String HOSTILE = "\"'><script>alert(1)</script>&amp;";

    private record Nothing() {
    }

    @Test
    void escapesEveryValue() {
        byte[] page = Templates.page(HOSTILE, List.of(new Crumb("/" + HOSTILE, HOSTILE)), "changelog", new ChangelogPage(HOSTILE, HOSTILE,
                HOSTILE, List.of(new Version(HOSTILE, HOSTILE, HOSTILE,
                List.of(new Entry(HOSTILE, HOSTILE, HOSTILE, true, HOSTILE, HOSTILE))))));
        Document read = Jsoup.parse(new String(page, StandardCharsets.UTF_8));
        assertEquals(List.of("/docs/docs.js"), read.select("script").eachAttr("src"));
        assertEquals(HOSTILE + " - Brinebook", read.title());
        assertEquals("v" + HOSTILE, read.select("h2").attr("id"));
        assertTrue(read.select("li .effect").text().contains(HOSTILE));
    }

    @Test
    void refusesAPageThatLacksWhatItsTemplateAsksFor() {
        assertThrows(MustacheException.class, () -> Templates.page("x", List.of(), "changelog", new Nothing()));
        assertThrows(MustacheException.class, () -> Templates.page("x", List.of(), "call", new Nothing()));
    }
}
