// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Rendering;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.model.Model;
import dev.brinebook.sheet.PageSize;
import dev.brinebook.sheet.PlanHead;
import dev.brinebook.sheet.PlanWords;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.sheet.Typesetter;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/**
 * The plan as a sheet for the practitioner: settings and stages to tick off, checks with blanks for what is read.
 *
 * @param say fixed words
 * @param head its foot
 * @param description the summary
 * @param settings what to enter
 * @param stages what to do
 * @param checks what to read
 * @param later what to look at later, with the date
 * @param cautions cautions to show
 */
record CommissioningSheet(Map<String, PlanWords> say, PlanHead head, Message description, List<CommissioningSettingLine> settings,
        List<Message> stages, List<Check> checks, List<Later> later, List<Message> cautions) {

    /**
     * A line of the table.
     *
     * @param at JSON pointer of the check in the answer
     * @param what its name
     * @param how how to read it
     * @param band from where to where it is right
     */
    record Check(String at, Message what, Message how, Message band) {
    }

    /** What to look at on a date. */
    record Later(Message date, Message what) {
    }

    /** The sheet as a page and as a document. */
    static List<AnswerForm<CommissioningRequest>> forms() {
        return List.of(new AnswerForm<>("text/html", "A sheet to print for the practitioner, with blanks for the readings. Its numbers "
                        + "are those of the JSON answer, rounded for its reader.", "html", "well-family", Sheet::policy, List.of(),
                        (request, model, as) -> xhtml(request, model, as).getBytes(StandardCharsets.UTF_8)),
                new AnswerForm<>("application/pdf", "The sheet of text/html as a tagged document with an embedded font.", "pdf",
                        "well-family", null, List.of(), (request, model, as) -> Typesetter.pdf(xhtml(request, model, as))));
    }

    private static String xhtml(CommissioningRequest request, Model model, Rendering as) {
        boolean metric = HomeCountry.units(request.units(), request.household().country()) == AnswerUnits.METRIC;
        return Sheet.xhtml("commissioning", metric ? PageSize.A4 : PageSize.LETTER, of(PlanCommissioning.answer(request, model),
                model.version()), as.language());
    }

    private static CommissioningSheet of(CommissioningAnswer answer, String modelVersion) {
        List<Check> checks = answer.checks().stream().map(check -> new Check("/checks/" + answer.checks().indexOf(check), check.name(),
                check.how(), band(check))).toList();
        return new CommissioningSheet(PlanWords.all(), PlanHead.of(answer.expected().from(), modelVersion), answer.summary(),
                answer.settings(), answer.stages().stream().map(CommissioningStageLine::instruction).toList(), checks,
                answer.later().stream().map(one -> new Later(Message.of("pattern.value", one.date()), one.instruction())).toList(),
                answer.cautions().stream().filter(one -> one.inFront()).map(one -> one.message()).toList());
    }

    private static Message band(CommissioningCheckLine check) {
        if (check.unit() == null) {
            return Message.of("planBand.yes");
        }
        if (check.passFrom() == null) {
            return Message.of("planBand.atMost", measured(check.passTo(), check.unit()));
        }
        return check.passTo() == null ? Message.of("planBand.atLeast", measured(check.passFrom(), check.unit()))
                : Message.of("text.to", Text.digits(check.passFrom().doubleValue()), measured(check.passTo(), check.unit()));
    }

    private static Message measured(BigDecimal value, ReadingUnit unit) {
        BigDecimal rounded = Text.digits(value.doubleValue());
        return switch (unit) {
            case MINUTE -> Message.of("settingFinding.minutes", rounded);
            case DEGREE -> Message.of("planBand.degrees", rounded);
            default -> Text.measure(rounded, unit.symbol());
        };
    }
}
