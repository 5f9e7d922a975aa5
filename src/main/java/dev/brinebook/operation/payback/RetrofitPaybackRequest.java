// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.request.softener.SaltDoseRange;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;

@SchemaDescription("A conversion and its data: either the use of a year before and after (asFound, converted), or a softener whose "
        + "existing and metered controls are compared in the long run (water, household, softener, metered).")
@Alternatives(value = {"asFound + converted", "water + household + softener + metered"}, required = true)
public record RetrofitPaybackRequest(
        @Property("A year now. Give this and converted, or water, household, softener and metered.") AnnualUseRequest asFound,
        @Property("A year after converting, for the same people and water.") AnnualUseRequest converted,
        @Property("The water test.") WaterRequest water,
        @Property("The household.") HouseholdRequest household,
        @Property("The existing softener, its control and its salt dose.") SoftenerRequest softener,
        @Property("The metered control after converting.") ControlRequest metered,
        @Property(value = "Salt dose after converting, within the range of softener.saltDose.", min = 0, aboveMin = true,
                max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                fallback = "the present dose, so that only the control changes") SaltDoseQuantity meteredSaltDose,
        @Property(value = "Cost of the conversion.", required = true) RetrofitRequest retrofit,
        @Property(value = "Conditions seen on site, if the softener is given.",
                fallback = "none: every condition is to check on site") SiteRequest site,
        @Property("Prices of salt, water and visits, their growth and the discount rate.") PricesRequest prices,
        @Property("Preferences: the first day of the simulated year, the capacity table, and the "
                + "reserve of a meter without one. No effect on a given use of a year.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the example days in answers with dates. No setting, verdict or expected figure depends on "
                + "it.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                        example = "1") Long seed) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        if (isTrial()) {
            checkTrial(at);
        } else {
            refuse("meteredSaltDose", meteredSaltDose, at);
            refuse("site", site, at);
        }
        RetrofitRequest.checkCurrency(retrofit, prices, household, at);
        SiteRequest.checkPrices(site, retrofit, prices, household, at);
    }

    /** Whether two controls are to be tried, rather than two years' use compared. */
    boolean isTrial() {
        return asFound == null;
    }

    private void checkTrial(Violations at) {
        CaseRequest.requireControl(softener, at);
        if (metered != null && metered.kind() == ControlRequest.Kind.CLOCK) {
            at.at("metered").add("kind", Code.INCONSISTENT, Message.of("problem.payback.mustMetereddelayedOrMeteredimmediate"));
        }
        if (softener != null && !at.at("softener").at("salt").here()) {
            SaltDoseRange.check(meteredSaltDose, softener.salt() == null ? Salt.SODIUM_CHLORIDE : softener.salt(),
                    at.at("meteredSaltDose"));
        }
    }

    private static void refuse(String name, Object part, Violations at) {
        if (part != null && !at.at(name).here()) {
            at.add(name, Code.INCONSISTENT, Message.of("problem.payback.omitWhenAsfoundConverted"));
        }
    }
}
