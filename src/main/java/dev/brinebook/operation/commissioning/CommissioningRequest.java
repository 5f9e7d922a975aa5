// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.ResinSanitising;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SaltDoseRange;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("A softener to put into service, the settings it gets, and what was read so far.")
public record CommissioningRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener. Give the flows of its valve in flows, or some bands rest on assumed flows.", required = true)
        SoftenerRequest softener,
        @Property("The settings to enter.") CommissioningSettingsRequest settings,
        @Property(value = "The brine tank.", fallback = "unknown: the fall of its level has no band") CommissioningTankRequest brineTank,
        @Property(value = "Hardness of one drop of the test that is used on site.", min = CommissioningRequest.MIN_DROP_MG_PER_L,
                max = CommissioningRequest.MAX_DROP_MG_PER_L, unit = "mg/L", byDefault = CommissioningRequest.USUAL_DROP_GRAINS,
                defaultUnit = "gpg")
        HardnessQuantity dropSize,
        @Property(value = "Strength of the bleach at hand.", min = ResinSanitising.MIN_PERCENT, max = ResinSanitising.MAX_PERCENT,
                unit = "%", byDefault = ResinSanitising.USUAL_PERCENT, example = "5.25") BigDecimal bleachPercent,
        @Property(value = "What was read, each check once.", minItems = 1, maxItems = CommissioningRequest.MOST_READINGS,
                fallback = "none: the answer is the plan alone") List<CommissioningReadingRequest> readings,
        @Property("Conditions seen at the site.") SiteRequest site,
        @Property("Prices of salt and water, for the dose that is advised.") PricesRequest prices,
        @Property("Preferences: the date of the commissioning in startDate, the steps of the controller.")
        PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the example days. No setting or band depends on it.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED, example = "1") Long seed)
        implements CaseRequest, Checked {

    /** One for each check. */
    static final int MOST_READINGS = 19;
    static final double MIN_DROP_MG_PER_L = 1;
    static final double MAX_DROP_MG_PER_L = 60;
    /** Source: [CP-FIELD-TESTS]. */
    static final double USUAL_DROP_GRAINS = 1;

    @Override
    public void check(Violations at) {
        LocalPrices.check(prices, household, at);
        if (softener != null && settings != null && !at.at("settings").here() && !at.at("softener").here()) {
            SaltDoseRange.check(settings.saltDose(), softener.saltOrDefault(), at.at("settings").at("saltDose"));
        }
        Set<CommissioningCheck> seen = EnumSet.noneOf(CommissioningCheck.class);
        for (int i = 0; readings != null && i < readings.size(); i++) {
            CommissioningReadingRequest one = readings.get(i);
            if (one != null && one.check() != null && !seen.add(one.check())) {
                at.at("readings").at(i).add("check", Code.INCONSISTENT, Message.of("problem.commissioning.checkTwice"));
            }
        }
    }
}
