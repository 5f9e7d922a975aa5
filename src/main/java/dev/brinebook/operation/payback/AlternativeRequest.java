// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.AlternativePlan;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.request.softener.CandidateRequest;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("One option.")
public record AlternativeRequest(
        @Property(value = "Your name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"metered controller\"") String name,
        @Property(value = "Kind of option: change nothing; keep the clock with the best interval and dose; convert to a "
                + "metered controller; replace by a metered softener; alternating twin tanks, one of which is always in "
                + "service; or no softening.", required = true, example = "\"metered\"") @Discriminator Kind kind,
        @Property(value = "The new softener. For twinBeds, each of the two tanks.", kinds = {"replacement", "twinBeds"},
                fallback = "tanks like the existing one") CandidateRequest softener,
        @Property(value = "Price today, parts and labour.", min = 0, max = Retrofit.MAX_COST, fallback = "none") Money cost,
        @Property(value = "Rebate on the cost, at most equal to it.", min = 0, max = Retrofit.MAX_COST, fallback = "none") Money rebate,
        @Property(value = "Service life in years. The remaining life at the end of the horizon has a residual value.",
                min = 1, max = Outlay.MAX_LIFE_YEARS, unit = "years", byDefault = ASSUMED_LIFE_YEARS, example = "15") Integer lifeYears,
        @Property(value = "Loan, if it is not paid immediately.", fallback = "paid immediately") FinancingRequest financing,
        @Property(value = "Paid service visits per year.", min = 0, max = AlternativePlan.MAX_VISITS_PER_YEAR,
                byDefault = AnnualUseRequest.ASSUMED_VISITS_PER_YEAR, example = "1")
        BigDecimal serviceVisitsPerYear) implements Checked {

    /** A valve or a softener; the trade counts on 10 to 15 years. */
    static final int ASSUMED_LIFE_YEARS = 15;

    /** Kind of option. */
    public enum Kind {
        AS_FOUND, TUNED_CLOCK, METERED, REPLACEMENT, TWIN_BEDS, NO_SOFTENING
    }

    @Override
    public void check(Violations at) {
        if (rebate != null && rebate.value() != null && !at.at("rebate").here() && !at.at("cost").here()
                && (cost == null || cost.value() == null || rebate.value().compareTo(cost.value()) > 0)) {
            at.add("rebate", Code.INCONSISTENT, Message.of("problem.common.mustMostCost"));
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
        return serviceVisitsPerYear == null ? AnnualUseRequest.ASSUMED_VISITS_PER_YEAR : serviceVisitsPerYear.doubleValue();
    }
}
