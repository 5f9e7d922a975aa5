package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.ConversionRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SaltDoseRange;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

@About("A conversion and what it is to be judged by: either a year's use before and after (asFound, converted), or a softener"
        + " whose control as found and metered control are compared here in the long run (water, household, softener,"
        + " metered).")
public record ConversionPaybackRequest(
        @Property("A year as it stands. Give this and converted, or the four parts to try.") AnnualUseRequest asFound,
        @Property("A year after the change, for the same people and water.") AnnualUseRequest converted,
        @Property("The water test.") WaterRequest water,
        @Property("The household.") HouseholdRequest household,
        @Property("The softener, its control and its salt dose as found.") SoftenerRequest softener,
        @Property("The metered control that the conversion would give it.") ControlRequest metered,
        @Property(value = "Salt dose after the change, within the range of softener.saltDose.", min = 0, aboveMin = true,
                max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                fallback = "the dose as found, so that only the control changes") SaltDoseQuantity meteredSaltDose,
        @Property(value = "What the conversion costs.", required = true) ConversionRequest conversion,
        @Property(value = "What was seen on site, where the softener is given.",
                fallback = "nothing: every condition is to check on site") SiteRequest site,
        @Property("Prices of salt, water and visits, their growth and the discount rate.") PricesRequest prices,
        @Property("Preferences: the first day of the year tried, the capacities to count with, the reserve of a meter that"
                + " has none set. Without effect on a year's use as given.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Sets example days, where dates are given; no setting, verdict or expected figure depends on it.", min = 0,
                max = PreferencesRequest.MAX_SEED, fallback = "1", example = "1") Long seed) implements CaseRequest, Checked {

    private static final List<String> TO_TRY = List.of("water", "household", "softener", "metered");

    @Override
    public void check(Violations at) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("asFound", asFound);
        figures.put("converted", converted);
        Map<String, Object> parts = new LinkedHashMap<>();
        parts.put("water", water);
        parts.put("household", household);
        parts.put("softener", softener);
        parts.put("metered", metered);
        boolean anyFigures = any(figures, at);
        if (anyFigures) {
            parts.put("meteredSaltDose", meteredSaltDose);
            parts.put("site", site);
            refuse(parts, at);
            require(figures, Message.of("a year's use is given for both sides"), at);
        } else if (any(parts, at) || meteredSaltDose != null) {
            require(parts, Message.of("{0} are tried together", String.join(", ", TO_TRY)), at);
            checkTrial(at);
        } else {
            at.add("asFound", Code.MISSING, Message.of("asFound is missing: give it and converted, or {0}",
                    String.join(", ", TO_TRY)));
        }
        ConversionRequest.checkCurrency(conversion, prices, household, at);
        SiteRequest.checkPrices(site, conversion, prices, household, at);
    }

    /** Whether two controls are to be tried, rather than two years' use compared. */
    boolean isTrial() {
        return asFound == null;
    }

    private void checkTrial(Violations at) {
        CaseRequest.requireControl(softener, at);
        if (metered != null && metered.kind() == ControlRequest.Kind.CLOCK) {
            at.at("metered").add("kind", Code.INCONSISTENT, Message.of("must be meteredDelayed or meteredImmediate"));
        }
        if (softener != null && !at.at("softener").at("salt").here()) {
            SaltDoseRange.check(meteredSaltDose, softener.salt() == null ? Salt.SODIUM_CHLORIDE : softener.salt(),
                    at.at("meteredSaltDose"));
        }
    }

    /** Whether any is there, be it faulty. */
    private static boolean any(Map<String, Object> parts, Violations at) {
        return parts.entrySet().stream().anyMatch(part -> part.getValue() != null || at.at(part.getKey()).here());
    }

    private static void require(Map<String, Object> parts, Message because, Violations at) {
        parts.forEach((name, part) -> {
            if (part == null && !at.at(name).here()) {
                at.add(name, Code.MISSING, Message.of("{0} is missing: {1}", name, because));
            }
        });
    }

    private static void refuse(Map<String, Object> parts, Violations at) {
        parts.forEach((name, part) -> {
            if (part != null && !at.at(name).here()) {
                at.add(name, Code.INCONSISTENT, Message.of("must be left out when a year's use is given by asFound and converted"));
            }
        });
    }
}
