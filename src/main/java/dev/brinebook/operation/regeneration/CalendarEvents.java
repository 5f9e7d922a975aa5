package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Upkeep;
import dev.brinebook.wording.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What stands in the calendar of a schedule's first policy, in words.
 *
 * @param household what tells this household from others
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

    static CalendarEvents of(Foreseen foreseen) {
        Foreseen.Tried first = foreseen.tried().get(0);
        List<Event> events = new ArrayList<>();
        regenerations(first, foreseen.units(), events);
        foreseen.saltPlan(first).ifPresent(plan -> purchases(plan, foreseen, events));
        foreseen.upkeep().forEach(due -> events.add(upkeep(due)));
        events.sort(Comparator.comparing(Event::date));
        List<Message> others = foreseen.tried().stream().skip(1).map(Foreseen.Tried::name).toList();
        return new CalendarEvents(household(foreseen), first.name(), events,
                others.isEmpty() ? Optional.empty()
                        : Optional.of(Message.of("Left out, with events of their own: {0}.", Message.joined("; ", others))));
    }

    private static String household(Foreseen foreseen) {
        Duty duty = foreseen.given().duty();
        return "hardness " + Rounding.answer(duty.hardness().totalMgPerL())
                + " use " + Rounding.answer(duty.meanLitres())
                + " resin " + Rounding.answer(foreseen.given().found().softener().bed().resinLitres())
                + " seed " + foreseen.seed();
    }

    private static void regenerations(Foreseen.Tried policy, AnswerUnits units, List<Event> events) {
        Regeneration each = policy.outcome().trial().regeneration();
        int minutes = (int) Math.ceil(each.minutes());
        Message uses = Message.counted("It uses {1} of salt and {2} of water and takes {0} minute.",
                "It uses {1} of salt and {2} of water and takes {0} minutes.", minutes,
                Text.of(units.mass(each.saltGrams() / 1000)), Text.of(units.volume(each.waterLitres())));
        policy.outcome().events().forEach(event -> events.add(new Event(Category.REGENERATION, event.date(),
                policy.startHour(), minutes, Message.of("Softener regenerates"),
                Message.joined(" ", List.of(Message.saying(event.reason()), uses)))));
    }

    private static void purchases(SaltPlan plan, Foreseen foreseen, List<Event> events) {
        Message bag = Text.of(foreseen.units().mass(foreseen.store().bagKilograms()));
        for (SaltPlan.SaltPurchase purchase : plan.purchases()) {
            events.add(Event.ofDay(Category.SALT, purchase.date(),
                    Message.counted("Buy salt for the softener: {0} bag of {1}",
                            "Buy salt for the softener: {0} bags of {1}", purchase.bags(), bag),
                    Message.of("They fill the brine tank to {0}.",
                            Text.of(foreseen.units().mass(purchase.filledToKilograms())))));
        }
    }

    private static Event upkeep(Upkeep due) {
        return switch (due.kind()) {
            case BACTERIA_TEST -> Event.ofDay(Category.WATER_TEST, due.date(),
                    Message.of("Have the well water tested for bacteria"),
                    Message.of("Once a year: a softener does not disinfect."));
            case SERVICE -> Event.ofDay(Category.SERVICE, due.date(), Message.of("Service the softener"), SERVICE);
            case RESIN_CLEANER -> Event.ofDay(Category.SERVICE, due.date(), Message.of("Clean the resin of the softener"),
                    Message.of("With a cleaner for iron: since the last time a litre of resin was fed {0} g of iron and manganese, as"
                            + " an assumption of what it takes.",
                            Text.number(Upkeep.ASSUMED_METALS_BETWEEN_CLEANINGS_GRAMS_PER_LITRE)));
            case SERVICE_WITH_RESIN_CLEANER -> Event.ofDay(Category.SERVICE, due.date(),
                    Message.of("Service the softener, with resin cleaner"), Message.joined(" ", List.of(SERVICE,
                            Message.of("Clean the resin with a cleaner for iron: this water fouls it, perhaps sooner than a"
                                    + " year."))));
        };
    }

    private static final Message SERVICE = Message.of("Once a year, as an assumption: test hardness before and behind it, look"
            + " for a salt bridge and mud in the brine tank, clean the injector and its screen, check the settings, the clock"
            + " and the drain line.");
}
