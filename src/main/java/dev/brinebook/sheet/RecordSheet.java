// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.FormChoice;
import dev.brinebook.api.Rendering;
import dev.brinebook.text.Message;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A sheet that keeps what was found of a water or at a softener, for the practitioner: a summary, then sections. Who was there and
 * when is written in by hand.
 *
 * @param say fixed words
 * @param title the title
 * @param description the summary of the answer
 * @param head blanks, and the version of the formulas
 * @param sections the sections, in their order
 */
public record RecordSheet(Map<String, Message> say, Message title, Message description, Head head, List<Section> sections) {

    private static final String TEMPLATE = "record";
    private static final Map<String, Message> WORDS = Map.of("NAME", Message.of("sheetWords.name"),
            "ADDRESS", Message.of("sheetWords.address"), "TESTED_ON", Message.of("sheetWords.testedOn"),
            "SEEN_ON", Message.of("sheetWords.seenOn"), "WRITTEN_BY", Message.of("sheetWords.writtenBy"),
            "PHONE", Message.of("sheetWords.phone"), "SIGNATURE", Message.of("sheetWords.signature"));
    private static final List<FormChoice<?>> CHOICES = List.of(new FormChoice<>("paper", PageSize.class,
            "The paper of the sheet. Default: a4 if the answer is in metric units, letter otherwise.", null));

    public RecordSheet {
        say = Map.copyOf(say);
        sections = List.copyOf(sections);
    }

    /** Head and foot: null for a blank. */
    public record Head(String name, Message testedOn, String address, Message seenOn, String writtenBy, String phone,
            String modelVersion) {
    }

    /** A line of a list: what it is about, null where the sentence says it, and the sentence with its place in the answer. */
    public record Line(Message name, String at, Message text) {

        public static Line of(String at, Message text) {
            return new Line(null, at, text);
        }
    }

    /** A column of a table, and whether it holds numbers. */
    public record Column(Message head, boolean numbers) {
    }

    /**
     * A part of the sheet.
     *
     * @param id its id on the page
     * @param heading its heading
     * @param columns columns of its table, one more than a row has cells; empty without a table
     * @param rows rows of its table
     * @param lines lines of its list
     */
    public record Section(String id, Message heading, List<Column> columns, List<Row> rows, List<Line> lines) {

        public Section {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            lines = List.copyOf(lines);
        }

        public static Section list(String id, Message heading, List<Line> lines) {
            return new Section(id, heading, List.of(), List.of(), lines);
        }

        /** A table: what holds a number in its first row is a column of numbers. */
        public static Section table(String id, Message heading, List<Message> heads, List<Row> rows) {
            List<Column> columns = IntStream.range(0, heads.size()).mapToObj(i -> new Column(heads.get(i), i > 0 && !rows.isEmpty()
                    && rows.get(0).cells().get(i - 1).exact() != null)).toList();
            return new Section(id, heading, columns, rows, List.of());
        }

        boolean isEmpty() {
            return rows.isEmpty() && lines.isEmpty();
        }
    }

    /** A sheet of an answer; sections that hold nothing are left out. */
    public static RecordSheet of(Message title, Message summary, String modelVersion, List<Section> sections) {
        return new RecordSheet(WORDS, title, summary, new Head(null, null, null, null, null, null, modelVersion),
                sections.stream().filter(section -> !section.isEmpty()).toList());
    }

    /**
     * The forms of an operation that answers in such a sheet too.
     *
     * @param example name of the operation's example that the contract shows them by
     * @param sheet the sheet of a request without violations
     * @param metric whether a request is answered in metric units
     */
    public static <Q extends Record> List<AnswerForm<Q>> forms(String example, Function<Q, RecordSheet> sheet, Predicate<Q> metric) {
        AnswerForm.Writer<Q, String> page = (request, model, as) -> xhtml(sheet.apply(request), metric.test(request), as);
        return List.of(new AnswerForm<>("text/html", "A sheet to print, in the language of Accept-Language. Its numbers are those of the "
                + "JSON answer, rounded for its reader.", "html", example, Sheet::policy, CHOICES,
                (request, model, as) -> page.write(request, model, as).getBytes(StandardCharsets.UTF_8)),
                new AnswerForm<>("application/pdf", "The sheet of text/html as a tagged document with an embedded font.", "pdf", example,
                        null, CHOICES, (request, model, as) -> Typesetter.pdf(page.write(request, model, as))));
    }

    private static String xhtml(RecordSheet sheet, boolean metric, Rendering as) {
        return Sheet.xhtml(TEMPLATE, as.choice(PageSize.class, metric ? PageSize.A4 : PageSize.LETTER), sheet, as.language());
    }
}
