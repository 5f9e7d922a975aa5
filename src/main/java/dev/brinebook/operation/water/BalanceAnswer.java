// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.chemistry.BalanceCriterion;
import dev.brinebook.water.chemistry.ChargeBalance;
import dev.brinebook.water.chemistry.Composition;
import dev.brinebook.water.chemistry.Ion;
import dev.brinebook.water.report.Sample;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

@SchemaDescription("Cations against anions of the report.")
public record BalanceAnswer(
        @Property(value = "Ions without which a balance says nothing, and that are not in the report.", eachOf = Ion.class)
        List<Ion> missing,
        @Property(value = "Sum of the cations.", min = 0, unit = "meq/L", example = "5.145") BigDecimal cations,
        @Property(value = "Sum of the anions.", min = 0, unit = "meq/L", example = "5.067") BigDecimal anions,
        @Property(value = "Difference against the sum, positive where cations are more.", optional = "when ions are missing", unit = "%",
                example = "0.76") BigDecimal differencePercent,
        @Property(value = "Expanded uncertainty (k = 2) of the difference.", optional = "when ions are missing", min = 0, unit = "%",
                example = "4.2") BigDecimal uncertaintyPercent,
        @Property(value = "What the rules in print say of it. Empty when ions are missing.", eachOf = BalanceCriterion.class)
        List<BalanceVerdict> verdicts,
        @Property(value = "What more of one ion would close the balance, each alone. Empty when ions are missing or the tests explain "
                + "the difference.", eachOf = Ion.class) List<ClosingIon> closing) {

    static BalanceAnswer of(Sample sample, AnswerUnits units) {
        Composition composition = sample.composition();
        ChargeBalance balance = ChargeBalance.of(composition, sample.ionUncertainties());
        boolean complete = composition.missing().isEmpty();
        return new BalanceAnswer(List.copyOf(composition.missing()), Rounding.answer(balance.cationsMeqPerL()),
                Rounding.answer(balance.anionsMeqPerL()), complete ? Rounding.answer(balance.percent()) : null,
                complete ? Rounding.answer(2 * balance.uncertaintyPercent()) : null,
                complete ? Arrays.stream(BalanceCriterion.values()).map(criterion -> BalanceVerdict.of(criterion, balance)).toList()
                        : List.of(),
                complete && !balance.isWithinUncertainty() ? balance.closingMgPerL().entrySet().stream()
                        .map(ion -> new ClosingIon(ion.getKey(), units.concentration(ion.getValue()))).toList() : List.of());
    }
}
