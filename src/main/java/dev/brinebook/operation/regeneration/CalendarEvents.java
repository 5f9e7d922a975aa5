// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MaintenanceTask;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The texts in the calendar of the first policy of a schedule.
 *
 * @param household what distinguishes this household from others
 * @param policy name of the policy
 * @param events by date
 * @param others what is said of the policies that are left out, if there are any
 */
record CalendarEvents(String household, Message policy, List<Event> events, Optional<Message> others) {

    enum Category {
        REGENERATION, SALT, WATER_TEST, SERVICE
    }

    /**
     * One event.
     *
     * @param startHour when it starts; none when it takes the day
     * @param minutes how long it lasts from there on
     */
    record Event(Category category, LocalDate date, OptionalInt startHour, int minutes, Message summary,
            Message description) {

        private static Event ofDay(Category category, LocalDate date, Message summary, Message description) {
            return new Event(category, date, OptionalInt.empty(), 0, summary, description);
        }
    }

    static CalendarEvents of(ScheduleResults foreseen) {
        ScheduleResults.Tried first = foreseen.tried().get(0);
        List<Event> events = new ArrayList<>();
        regenerations(first, foreseen.units(), events);
        foreseen.saltPlan(first).ifPresent(plan -> purchases(plan, foreseen, events));
        foreseen.upkeep().forEach(due -> events.add(upkeep(due)));
        events.sort(Comparator.comparing(Event::date));
        List<Message> others = foreseen.tried().stream().skip(1).map(policy -> policy.name().quoted()).toList();
        return new CalendarEvents(household(foreseen), first.name(), events,
                others.isEmpty() ? Optional.empty()
                        : Optional.of(Message.of("calendarEvents.thesePoliciesCalendarTheir", Message.joined(Joint.SEMICOLON, others))));
    }

    private static String household(ScheduleResults foreseen) {
        DesignConditions duty = foreseen.given().duty();
        return "hardness " + Rounding.answer(duty.hardness().totalMgPerL())
                + " use " + Rounding.answer(duty.meanLitres())
                + " resin " + Rounding.answer(foreseen.given().found().softener().bed().resinLitres())
                + " seed " + foreseen.seed();
    }

    private static void regenerations(ScheduleResults.Tried policy, AnswerUnits units, List<Event> events) {
        Regeneration each = policy.outcome().trial().regeneration();
        int minutes = (int) Math.ceil(each.minutes());
        Message uses = Message.of("calendarEvents.regenerationUsesSaltWater", minutes,
                Text.rounded(units.mass(each.saltGrams() / 1000)), Text.rounded(units.volume(each.waterLitres())));
        policy.outcome().events().forEach(event -> events.add(new Event(Category.REGENERATION, event.date(),
                policy.startHour(), minutes, Message.of("calendarEvents.softenerRegenerates"),
                Message.sentences(List.of(Message.of(event.reason()), uses)))));
    }

    private static void purchases(SaltPlan plan, ScheduleResults foreseen, List<Event> events) {
        Message bag = Text.of(foreseen.units().mass(foreseen.store().bagKilograms()));
        for (SaltPlan.SaltPurchase purchase : plan.purchases()) {
            events.add(Event.ofDay(Category.SALT, purchase.date(),
                    Message.of("calendarEvents.buySaltSoftenerBags", purchase.bags(), bag),
                    Message.of("calendarEvents.brineTankThenHolds",
                            Text.rounded(foreseen.units().mass(purchase.filledToKilograms())))));
        }
    }

    private static Event upkeep(MaintenanceTask due) {
        return switch (due.kind()) {
            case BACTERIA_TEST -> Event.ofDay(Category.WATER_TEST, due.date(),
                    Message.of("calendarEvents.wellWaterTestedBacteria"),
                    Message.of("calendarEvents.doOnceYearSoftener"));
            case SERVICE -> Event.ofDay(Category.SERVICE, due.date(), Message.of("calendarEvents.serviceSoftener"), SERVICE);
            case RESIN_CLEANER -> Event.ofDay(Category.SERVICE, due.date(), Message.of("calendarEvents.cleanResinSoftener"),
                    Message.of("calendarEvents.useResinCleanerIron",
                            Text.number(MaintenanceTask.ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE)));
            case SERVICE_WITH_RESIN_CLEANER -> Event.ofDay(Category.SERVICE, due.date(),
                    Message.of("calendarEvents.serviceSoftenerResinCleaner"), Message.sentences(List.of(SERVICE,
                            Message.of("calendarEvents.cleanResinResinCleaner"))));
        };
    }

    private static final Message SERVICE = Message.of("calendarEvents.doOnceYearAssumption");
}
