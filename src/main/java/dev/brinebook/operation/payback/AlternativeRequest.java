package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Conversion;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Way;
import dev.brinebook.request.softener.CandidateRequest;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("One way of going on.")
public record AlternativeRequest(
        @Property(value = "The caller's name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"metered controller\"") String name,
        @Property(value = "The kind: keep all as found; keep the clock but set its interval and dose as well as can be; convert"
                + " to a metered controller; replace by a metered softener; a pair of beds of which one is always in service; or"
                + " soften nothing.", required = true, example = "\"metered\"") @TellsKind Kind kind,
        @Property(value = "The softener that it puts there; of twinBeds each of the two.", kinds = {"replacement", "twinBeds"},
                fallback = "beds like the one that stands there") CandidateRequest softener,
        @Property(value = "Parts and work, today.", fallback = "0") Money cost,
        @Property(value = "Rebate on the cost, at most the cost.", fallback = "0") Money rebate,
        @Property(value = "Years until it is bought again; what is left of them at the end of the horizon counts as worth.",
                min = 1, max = Outlay.MAX_LIFE_YEARS, unit = "years", fallback = "15", example = "15") Integer lifeYears,
        @Property(value = "How it is paid, if not at once.", fallback = "at once") FinancingRequest financing,
        @Property(value = "Paid service visits in a year.", min = 0, max = Way.MAX_VISITS_PER_YEAR, fallback = "0", example = "1")
        BigDecimal serviceVisitsPerYear) implements Checked {

    /** A valve or a softener; the trade counts on 10 to 15 years. */
    static final int ASSUMED_LIFE_YEARS = 15;

    /** What is done. */
    public enum Kind {
        AS_FOUND, TUNED_CLOCK, METERED, REPLACEMENT, TWIN_BEDS, NO_SOFTENING
    }

    @Override
    public void check(Violations at) {
        checkAmount(cost, "cost", at);
        checkAmount(rebate, "rebate", at);
        if (rebate != null && rebate.value() != null && !at.at("rebate").here() && !at.at("cost").here()
                && (cost == null || cost.value() == null || rebate.value().compareTo(cost.value()) > 0)) {
            at.add("rebate", Code.INCONSISTENT, Message.of("must not be more than the cost"));
        }
    }

    private static void checkAmount(Money amount, String name, Violations at) {
        if (amount != null && amount.value() != null && !at.at(name).here()
                && !(amount.value().signum() >= 0 && amount.value().doubleValue() <= Conversion.MAX_COST)) {
            at.add(name, Code.OUT_OF_RANGE, Message.of("must be from 0 to {0}", Text.number(Conversion.MAX_COST)));
        }
    }

    Outlay outlay() {
        double paid = cost == null ? 0 : cost.value().doubleValue();
        double back = rebate == null ? 0 : rebate.value().doubleValue();
        int life = lifeYears == null ? ASSUMED_LIFE_YEARS : lifeYears;
        return financing == null ? new Outlay(paid, back, life)
                : new Outlay(paid, back, life, financing.sharePercent().doubleValue() / 100, financing.years(),
                        financing.interestPercentPerYear().doubleValue() / 100);
    }

    double visits() {
        return serviceVisitsPerYear == null ? 0 : serviceVisitsPerYear.doubleValue();
    }
}
