// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("A case and the options to compare.")
public record AlternativesRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The existing softener and its controller.", required = true) SoftenerRequest softener,
        @Property(value = "The options to compare. The others are compared with the first, unless baseline names another.",
                required = true, minItems = 2, maxItems = Comparison.MAX_WAYS)
        List<AlternativeRequest> alternatives,
        @Property(value = "Name of the alternative that the others are compared with.", fallback = "the first",
                minItems = 1, maxItems = 64, example = "\"as it is\"") String baseline,
        @Property(value = "Horizon in years.", min = Retrofit.MIN_HORIZON_YEARS, max = Retrofit.MAX_HORIZON_YEARS,
                unit = "years", byDefault = Retrofit.ASSUMED_HORIZON_YEARS, example = "10") Integer horizonYears,
        @Property("Prices of salt, water and visits, their growth and the discount rate.") PricesRequest prices,
        @Property(value = "Water tariff in blocks of annual use, instead of prices.water. The water of the softener is added "
                + "to that of the household.", minItems = 1, maxItems = WaterTariff.MAX_BLOCKS, fallback = "one price")
        List<TariffBlock> waterBlocks,
        @Property(value = "Sewer tariff in blocks of annual use, instead of prices.sewer.", minItems = 1,
                maxItems = WaterTariff.MAX_BLOCKS, fallback = "one price") List<TariffBlock> sewerBlocks,
        @Property(value = "Number of whole bags of salt per purchase.", min = 1, max = 100,
                fallback = "salt is priced by weight", example = "2") Integer bagsPerTrip,
        @Property(value = "Uncertain inputs.", fallback = "no simulation of uncertain inputs") UncertaintyRequest uncertainty,
        @Property("Preferences of the practitioner.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the simulation of uncertain inputs. Nothing else depends on it.", min = 0,
                max = PreferencesRequest.MAX_SEED,
                byDefault = PreferencesRequest.DEFAULT_SEED, example = "1") Long seed) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
        Set<String> names = new HashSet<>();
        if (at.at("prices").here()) {
            return;
        }
        LocalPrices.check(prices, household, at);
        String currency = LocalPrices.of(prices, household).currency().getCurrencyCode();
        for (int i = 0; alternatives != null && i < alternatives.size(); i++) {
            AlternativeRequest one = alternatives.get(i);
            if (one == null) {
                continue;
            }
            if (one.name() != null && !names.add(one.name())) {
                at.at("alternatives").at(i).add("name", Code.INCONSISTENT, Message.of("problem.common.mustDifferNamesBefore"));
            }
            requireCurrency(one.cost(), currency, "cost", at.at("alternatives").at(i));
            requireCurrency(one.rebate(), currency, "rebate", at.at("alternatives").at(i));
        }
        if (baseline != null && !at.at("baseline").here() && !at.at("alternatives").here() && !names.contains(baseline)) {
            at.add("baseline", Code.INCONSISTENT, Message.of("problem.payback.mustNameAlternative"));
        }
        checkBlocks(waterBlocks, "waterBlocks", currency, at);
        checkBlocks(sewerBlocks, "sewerBlocks", currency, at);
        if (uncertainty != null) {
            requireCurrency(uncertainty.enoughStandardError(), currency, "enoughStandardError", at.at("uncertainty"));
        }
    }

    private static void requireCurrency(Money amount, String currency, String name, Violations at) {
        if (amount != null && amount.unit() != null && !at.at(name).here() && !amount.unit().equals(currency)) {
            at.add(name, Code.INCONSISTENT, Message.of("problem.common.mustCurrencyPricesPrices", currency));
        }
    }

    private static void checkBlocks(List<TariffBlock> blocks, String name, String currency, Violations at) {
        if (blocks == null || at.at(name).here() || blocks.contains(null)) {
            return;
        }
        double before = 0;
        for (int i = 0; i < blocks.size(); i++) {
            TariffBlock block = blocks.get(i);
            boolean last = i == blocks.size() - 1;
            boolean whole = block.upTo() != null && block.upTo().value() != null && block.upTo().unit() != null;
            if (last == whole) {
                at.at(name).at(i).add("upTo", Code.INCONSISTENT, last
                        ? Message.of("problem.payback.omitLastBlockNo")
                        : Message.of("problem.payback.requiredEveryBlockBut"));
            } else if (whole && !(block.upTo().inBase() > before)) {
                at.at(name).at(i).add("upTo", Code.INCONSISTENT, Message.of("problem.payback.mustMoreThanBlock"));
            }
            before = whole ? block.upTo().inBase() : before;
            Money price = block.price() == null ? null : block.price().price();
            requireCurrency(price, currency, "price", at.at(name).at(i));
        }
    }
}
