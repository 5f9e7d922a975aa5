package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Conversion;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.wording.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

@About("A case and the ways of going on with it that are to be compared.")
public record AlternativesRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener that stands there, with its control.", required = true) SoftenerRequest softener,
        @Property(value = "The ways of going on; the first is the one that the others are held against, unless baseline names"
                + " another.", required = true, minItems = 2, maxItems = Comparison.MAX_WAYS)
        List<AlternativeRequest> alternatives,
        @Property(value = "Name of the alternative that the others are held against.", fallback = "the first",
                minItems = 1, maxItems = 64, example = "\"as it is\"") String baseline,
        @Property(value = "Years that are looked at.", min = Conversion.MIN_HORIZON_YEARS, max = Conversion.MAX_HORIZON_YEARS,
                unit = "years", fallback = "10", example = "10") Integer horizonYears,
        @Property("Prices of salt, water and visits, their growth and the discount rate.") PricesRequest prices,
        @Property(value = "Water by blocks of a year's use, instead of prices.water. The softener's water comes on top of the"
                + " household's.", minItems = 1, maxItems = WaterTariff.MAX_BLOCKS, fallback = "one price")
        List<TariffBlock> waterBlocks,
        @Property(value = "Sewer by blocks of a year's use, instead of prices.sewer.", minItems = 1,
                maxItems = WaterTariff.MAX_BLOCKS, fallback = "one price") List<TariffBlock> sewerBlocks,
        @Property(value = "Bags of salt that are bought at a time, each whole.", min = 1, max = 100,
                fallback = "salt counts by weight", example = "2") Integer bagsPerTrip,
        @Property(value = "What is not known exactly.", fallback = "nothing is drawn") UncertaintyRequest uncertainty,
        @Property("Preferences where there is a choice.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Sets the draws of what is not known exactly; nothing else depends on it.", min = 0,
                max = PreferencesRequest.MAX_SEED,
                fallback = "1", example = "1") Long seed) implements CaseRequest, Checked {

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
                at.at("alternatives").at(i).add("name", Code.INCONSISTENT, Message.of("must differ from the names before it"));
            }
            requireCurrency(one.cost(), currency, "cost", at.at("alternatives").at(i));
            requireCurrency(one.rebate(), currency, "rebate", at.at("alternatives").at(i));
        }
        if (baseline != null && !at.at("baseline").here() && !at.at("alternatives").here() && !names.contains(baseline)) {
            at.add("baseline", Code.INCONSISTENT, Message.of("must be the name of an alternative"));
        }
        checkBlocks(waterBlocks, "waterBlocks", currency, at);
        checkBlocks(sewerBlocks, "sewerBlocks", currency, at);
        if (uncertainty != null) {
            requireCurrency(uncertainty.enoughStandardError(), currency, "enoughStandardError", at.at("uncertainty"));
        }
    }

    private static void requireCurrency(Money amount, String currency, String name, Violations at) {
        if (amount != null && amount.unit() != null && !at.at(name).here() && !amount.unit().equals(currency)) {
            at.add(name, Code.INCONSISTENT, Message.of("must be in {0}, the currency of the prices;"
                    + " where prices are left out they are in the money of the country", currency));
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
                        ? Message.of("must be left out in the last block, which has no end")
                        : Message.of("must be given in every block but the last"));
            } else if (whole && !(block.upTo().inBase() > before)) {
                at.at(name).at(i).add("upTo", Code.INCONSISTENT, Message.of("must be more than that of the block before"));
            }
            before = whole ? block.upTo().inBase() : before;
            Money price = block.price() == null ? null : block.price().price();
            requireCurrency(price, currency, "price", at.at(name).at(i));
            if (price != null && price.value() != null && !(price.value().signum() >= 0
                    && price.value().doubleValue() <= PricesRequest.MAX_AMOUNT)) {
                at.at(name).at(i).add("price", Code.OUT_OF_RANGE, Message.of("must be from 0 to {0}",
                        Text.number(PricesRequest.MAX_AMOUNT)));
            }
        }
    }
}
