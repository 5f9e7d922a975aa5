// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.source.Source;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("What single results of an answer are, and where they come from.")
public record ExplanationAnswer(
        @Property(value = "Operation that gave the answer.", example = "\"assess\"") String calculator,
        @Property(value = "One for each pointer, in their order.", maxItems = Explainer.MAX_POINTERS) List<Explained> explanations,
        @Property("Cautions of severity stop and warning of the answer, to show.") List<CautionAnswer> cautions,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    /** Numbers of one formula at most. */
    static final int MOST_NUMBERS = 100;

    @SchemaDescription("What a result is, and where it comes from.")
    public record Explained(
            @Property(value = "JSON pointer to the result, as requested.", example = "\"/settings/reserve\"") String pointer,
            @Property(value = "The number, quantity, code or text there, as in the answer. For a number that may not exist, its "
                    + "value or its reason.", optional = "for an object or list, and for a "
                    + "pointer with `*`", example = "{\"value\": 570, \"unit\": \"gal\"}") Object value,
            @Property(value = "Formulas of the result, of the parts of the answer that hold it, and of what it holds.",
                    maxItems = Explanation.MOST_ENTRIES)
            List<ExplainedFormula> formulas,
            @Property(value = "Other results of the answer that the formulas take.", maxItems = Explanation.MOST_ENTRIES)
            List<Operand> from,
            @Property(value = "The inputs that can move it: what the request gives first, then what the calculation took instead.",
                    maxItems = Explanation.MOST_ENTRIES) List<Resolved> assumptions) {
    }

    @SchemaDescription("A result that another is calculated from.")
    public record Operand(
            @Property(value = "JSON pointer to it in the answer.", example = "\"/settings/capacity\"") String pointer,
            @Property(value = "The number, quantity, code or text there.", example = "{\"value\": 570, \"unit\": \"gal\"}") Object value) {
    }

    @SchemaDescription("A formula, and its source.")
    public record ExplainedFormula(
            @Property(value = "JSON pointer to the result, or to the part of the answer, that it gives. `*` means every element of a "
                    + "list.", example = "\"/settings/reserve\"") String pointer,
            @Property(value = "The formula, in words, with the numbers of this case.", example = "\"29,700 grains ÷ 28 gpg\"")
            Message formula,
            @Property(value = "The numbers of this case in the formula, in their order, rounded as in its words.",
                    maxItems = ExplanationAnswer.MOST_NUMBERS) List<FormulaNumber> numbers,
            @Property("The publication or practice that it comes from.") FormulaSource source) {
    }

    @SchemaDescription("A number in a formula.")
    public record FormulaNumber(
            @Property(value = "The number.", example = "28") BigDecimal value,
            @Property(value = "Its unit.", optional = "for a number without a unit", example = "\"gpg\"") String unit) {
    }

    @SchemaDescription("The source of a formula, from the register of sources.")
    public record FormulaSource(
            @Property(value = "Key in the register, and anchor in /docs/sources.", example = "\"NIST-HB135\"") String key,
            @Property(value = "What it is, with its edition.", example = "\"NIST Handbook 135, Life-cycle costing manual (2022)\"")
            Message title,
            @Property(value = "A page or DOI of the work.", optional = "when none is known for certain",
                    example = "\"https://www.wbdg.org/ffc/nist/criteria/nist-handbook-135\"") String url,
            @Property("Reliability of the source.") Source.Kind kind) {

        static FormulaSource of(String key) {
            Source source = Sources.get(key);
            return new FormulaSource(key, source.inWords(), source.url(), source.kind());
        }
    }
}
