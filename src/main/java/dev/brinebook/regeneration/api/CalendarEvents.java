package dev.brinebook.regeneration.api;

import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.regeneration.Reason;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Upkeep;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * What stands in the calendar of a schedule's first policy, in words.
 *
 * @param household what tells this household from others
 * @param policy name of the policy
 * @param events by date
 * @param others what is said of the policies that are left out; empty when none is
 */
record CalendarEvents(String household, String policy, List<Event> events, String others) {

    enum Category {
        REGENERATION, SALT, WATER_TEST, SERVICE
    }

    /**
     * One event.
     *
     * @param startHour when it starts; none when it takes the day
     * @param minutes how long it lasts from there on
     */
    record Event(Category category, LocalDate date, OptionalInt startHour, int minutes, String summary,
            String description) {

        private static Event ofDay(Category category, LocalDate date, String summary, String description) {
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
        List<String> others = foreseen.tried().stream().skip(1).map(Foreseen.Tried::name).toList();
        return new CalendarEvents(household(foreseen), first.name(), events,
                others.isEmpty() ? "" : "Left out, with events of their own: " + String.join("; ", others) + ".");
    }

    private static String household(Foreseen foreseen) {
        Duty duty = foreseen.given().duty();
        return "hardness " + Rounding.answer(duty.hardness().totalMgPerL())
                + " use " + Rounding.answer(duty.days().meanLitres())
                + " resin " + Rounding.answer(foreseen.given().found().softener().bed().resinLitres())
                + " seed " + foreseen.seed();
    }

    private static void regenerations(Foreseen.Tried policy, AnswerUnits units, List<Event> events) {
        Regeneration each = policy.outcome().trial().regeneration();
        int minutes = (int) Math.ceil(each.minutes());
        String uses = " It uses " + Text.of(units.mass(each.saltGrams() / 1000)) + " of salt and "
                + Text.of(units.volume(each.waterLitres())) + " of water and takes " + minutes + " minutes.";
        policy.outcome().events().forEach(event -> events.add(new Event(Category.REGENERATION, event.date(),
                policy.startHour(), minutes, "Softener regenerates", started(event.reason()) + uses)));
    }

    private static String started(Reason reason) {
        return reason == Reason.OVERRIDE ? "The day override starts it."
                : "The " + WireNames.of(reason) + " starts it.";
    }

    private static void purchases(SaltPlan plan, Foreseen foreseen, List<Event> events) {
        String bag = Text.of(foreseen.units().mass(foreseen.store().bagKilograms())).toString();
        for (SaltPlan.SaltPurchase purchase : plan.purchases()) {
            events.add(Event.ofDay(Category.SALT, purchase.date(), "Buy salt for the softener: "
                    + (purchase.bags() == 1 ? "1 bag" : purchase.bags() + " bags") + " of " + bag,
                    "They fill the brine tank to " + Text.of(foreseen.units().mass(purchase.filledToKilograms())) + "."));
        }
    }

    private static Event upkeep(Upkeep due) {
        return switch (due.kind()) {
            case BACTERIA_TEST -> Event.ofDay(Category.WATER_TEST, due.date(), "Have the well water tested for bacteria",
                    "Once a year: a softener does not disinfect.");
            case SERVICE -> Event.ofDay(Category.SERVICE, due.date(), "Service the softener", SERVICE);
            case SERVICE_WITH_RESIN_CLEANER -> Event.ofDay(Category.SERVICE, due.date(),
                    "Service the softener, with resin cleaner", SERVICE + " Clean the resin with a cleaner for iron: this"
                    + " water fouls it, perhaps sooner than a year.");
        };
    }

    private static final String SERVICE = "Once a year, as an assumption: test hardness before and behind it, look for a salt"
            + " bridge and mud in the brine tank, clean the injector and its screen, check the settings, the clock and the"
            + " drain line.";
}
