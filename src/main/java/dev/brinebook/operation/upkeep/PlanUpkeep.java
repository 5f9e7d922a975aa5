// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Rendering;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.calendar.CalendarText;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.household.Days;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.softener.ResinState;
import dev.brinebook.request.softener.ResolvedSoftener;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.sheet.Typesetter;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MaintenanceTask;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import dev.brinebook.upkeep.UpkeepConditions;
import dev.brinebook.upkeep.UpkeepItem;
import dev.brinebook.upkeep.UpkeepTask;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What keeps a softener going, and when. */
public final class PlanUpkeep {

    private static final String CALENDAR = "A calendar file (RFC 5545) in UTF-8 with every date of the plan as a whole-day event. No event "
            + "blocks time or has an alarm. DTSTAMP is the first day at 00:00 UTC. The UID of an event depends on the task, its date, the "
            + "compensated hardness, household use and resin volume, so a later plan of the same case replaces its events.";

    public static final Operation<UpkeepRequest, UpkeepAnswer> OPERATION = new Operation<>(
            "planUpkeep", "/v1/upkeep-plan", "Plan the upkeep of a softener",
            "Choose this for the maintenance of a softener: salt, resin cleaner by the iron that the resin holds, brine tank, injector, "
                    + "filter, seals, meter, bacteria test of a private well, and replacement of the resin by the capacity left. Each task "
                    + "has its trigger, its interval, the source, and dates from a given start. With Accept text/calendar it returns a "
                    + "calendar file. For dates of regenerations and salt purchases choose scheduleRegeneration.",
            UpkeepRequest.class, UpkeepAnswer.class, (request, model) -> planned(request, model).answer(), List.of(),
            List.of("well-family", "apartment")).answeringIn(List.of(AnswerForm.text(CalendarText.MEDIA_TYPE, CALENDAR, "ics",
                    "well-family", PlanUpkeep::calendar),
                    new AnswerForm<>("text/html", "A sheet to print for the customer. Its numbers are those of the JSON answer, rounded "
                            + "for its reader.", "html", "apartment", Sheet::policy, List.of(),
                            (request, model, as) -> sheet(request, model, as).getBytes(StandardCharsets.UTF_8)),
                    new AnswerForm<>("application/pdf", "The sheet of text/html as a tagged document with an embedded font.", "pdf",
                            "apartment", null, List.of(), (request, model, as) -> Typesetter.pdf(sheet(request, model, as)))));

    private static final String OWN = "OWN-ASSUMPTION";

    private PlanUpkeep() {
    }

    /** The answer, and the name of its case in a calendar. */
    private record Planned(UpkeepAnswer answer, String household) {
    }

    private static Planned planned(UpkeepRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        UpkeepConditions conditions = conditions(request, given, explanation);
        int years = (int) explanation.resolve(request.years(), Resolved.of("/years", UpkeepRequest.ASSUMED_YEARS, "years").byDefault(OWN));
        LocalDate first = duty.days().firstDate();
        int days = years * Days.PER_YEAR;
        List<UpkeepTask> tasks = UpkeepTask.of(conditions, first, days);
        explain(tasks, explanation);
        if (tasks.stream().anyMatch(task -> task.item() == UpkeepItem.RESIN_CLEANER)) {
            explanation.caution(Caution.RESIN_CLEANER_ALONE);
        }
        explanation.caution(Caution.BLEACH_ALONE, Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        double metals = conditions.water().ironAndManganeseMgPerL() * conditions.bedVolumesPerDay() * Days.PER_YEAR / 1000;
        UpkeepAnswer answer = new UpkeepAnswer(explanation.behindStops(summary(tasks)), first, first.plusDays(days),
                tasks.stream().map(UpkeepLine::of).toList(), Rounding.answer(metals), Rounding.answer(100 * conditions.sitesLeft()),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
        return new Planned(answer, "upkeep hardness " + Rounding.answer(duty.hardness().totalMgPerL()) + " use "
                + Rounding.answer(duty.meanLitres()) + " resin " + Rounding.answer(given.found().softener().bed().resinLitres()));
    }

    private static UpkeepConditions conditions(UpkeepRequest request, SoftenerCase given, Explanation explanation) {
        DesignConditions duty = given.duty();
        ResolvedSoftener softener = request.softener().resolved(given.model());
        double usualLoss = ResinState.assumedYearlyLossShare(duty.water());
        double loss = explanation.resolve(request.softener().yearlyCapacityLossPercent(), 100 * usualLoss, Resolved.of(
                "/softener/yearlyCapacityLossPercent", 100 * usualLoss, "%").byDefault("UFC-3-240-13FN")) / 100;
        boolean rock = isTrue("/rockSalt", request.rockSalt(), explanation);
        boolean filter = isTrue("/sedimentFilter", request.sedimentFilter(), explanation);
        return new UpkeepConditions(duty.water(), duty.meanLitres() / given.found().softener().bed().resinLitres(),
                softener.resinState(duty.water(), explanation).sitesLeft(), loss, rock, filter);
    }

    private static boolean isTrue(String pointer, Boolean given, Explanation explanation) {
        explanation.assume(given == null ? Resolved.ofCode(pointer, "false").byDefault(OWN) : Resolved.ofCode(pointer, given.toString()));
        return given != null && given;
    }

    private static void explain(List<UpkeepTask> tasks, Explanation explanation) {
        for (int i = 0; i < tasks.size(); i++) {
            UpkeepItem item = tasks.get(i).item();
            if (item == UpkeepItem.RESIN_CLEANER) {
                explanation.because("/tasks/" + i + "/everyDays", Message.of("formula.upkeep.cleaner"), item.sourceKey());
            }
            if (item == UpkeepItem.RESIN) {
                explanation.because("/tasks/" + i + "/everyDays", Message.of("formula.upkeep.resin"), item.sourceKey());
            }
        }
        explanation.assume(Resolved.of("metalsBetweenCleanings", MaintenanceTask.ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE, "g/L")
                .byDefault(OWN));
    }

    /** The number of dates, and the first of them. */
    private static Message summary(List<UpkeepTask> tasks) {
        Optional<UpkeepTask> next = tasks.stream().filter(task -> !task.dates().isEmpty())
                .min(Comparator.comparing((UpkeepTask task) -> task.dates().get(0)));
        List<Message> sentences = new ArrayList<>();
        sentences.add(Message.of("upkeep.tasks", tasks.size()));
        next.ifPresent(task -> {
            sentences.add(Message.of("upkeep.next", task.dates().get(0)));
            sentences.add(Message.of(task.item()));
        });
        return Message.sentences(sentences);
    }

    private static String calendar(UpkeepRequest request, Model model, Rendering as) {
        Planned planned = planned(request, model);
        Language language = as.language();
        List<CalendarText.Event> events = new ArrayList<>();
        for (UpkeepLine line : planned.answer().tasks()) {
            line.dates().forEach(date -> events.add(new CalendarText.Event(String.join("\n", planned.household(), line.item().name(),
                    date.toString()), date, OptionalInt.empty(), 0, "service", line.task().in(language),
                    line.trigger().in(language))));
        }
        events.sort(Comparator.comparing(CalendarText.Event::date));
        return CalendarText.of(new CalendarText.Head("-//Brinebook//Upkeep plan " + model.version() + "//EN",
                Message.of("upkeep.title").in(language), description(planned.answer()).in(language), planned.answer().from()), events);
    }

    private static String sheet(UpkeepRequest request, Model model, Rendering as) {
        return UpkeepSheet.xhtml(planned(request, model).answer(), HomeCountry.units(request.units(), request.household().country()),
                model.version(), as.language());
    }

    private static Message description(UpkeepAnswer answer) {
        List<Message> sentences = new ArrayList<>(List.of(answer.summary()));
        answer.cautions().stream().filter(caution -> caution.severity() != Severity.INFO).map(CautionAnswer::message)
                .forEach(sentences::add);
        return Message.sentences(sentences);
    }
}
