// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.FormChoice;
import dev.brinebook.api.Rendering;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.model.Model;
import dev.brinebook.sheet.PageSize;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.sheet.Typesetter;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The answer as sheets to print. Every number is one of the answer, rounded for its reader, with its pointer. */
final class AssessmentSheets {

    private static final List<FormChoice<?>> CHOICES = List.of(
            new FormChoice<>("sheet", SheetKind.class, "The sheet to print. letter: one page for the customer. card: the settings "
                    + "to enter, for the installer. checklist: for before, during and after the work, with the reasons. Default: letter.",
                    SheetKind.LETTER),
            new FormChoice<>("paper", PageSize.class, "The paper of the sheet. Default: a4 if units is metric, letter otherwise.", null));

    private AssessmentSheets() {
    }

    /** The forms, for the answer to a request. */
    static List<AnswerForm<AssessmentRequest>> forms() {
        return List.of(
                new AnswerForm<>("text/html", "A sheet to print, in the language of Accept-Language. Its numbers are those of the JSON "
                        + "answer, rounded for its reader.", "html", "apartment", Sheet::policy, CHOICES,
                        (request, model, as) -> xhtml(request, model, as).getBytes(StandardCharsets.UTF_8)),
                new AnswerForm<>("application/pdf", "The sheet of text/html as a tagged document with an embedded font.", "pdf",
                        "apartment", null, CHOICES, (request, model, as) -> Typesetter.pdf(xhtml(request, model, as))));
    }

    /** A sheet as a page. */
    static String xhtml(AssessmentRequest request, Model model, Rendering as) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Assess.Assessed assessed = Assess.assessed(request, model);
        SheetCase sheet = new SheetCase(request, assessed.answer(), assessed.assessment(), units, as.language(), model.version());
        PageSize paper = as.choice(PageSize.class, units == AnswerUnits.METRIC ? PageSize.A4 : PageSize.LETTER);
        return switch (as.choice(SheetKind.class, SheetKind.LETTER)) {
            case LETTER -> Sheet.xhtml("letter", paper, CustomerLetter.of(sheet), as.language());
            case CARD -> Sheet.xhtml("card", paper, InstallerCard.of(sheet), as.language());
            case CHECKLIST -> Sheet.xhtml("checklist", paper, SiteChecklist.of(sheet), as.language());
        };
    }
}
