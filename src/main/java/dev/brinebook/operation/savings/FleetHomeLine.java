// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.savings.FleetSavings;
import dev.brinebook.savings.SavingsFinding;
import dev.brinebook.savings.SavingsVerdict;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@SchemaDescription("The saving of one home of a fleet.")
public record FleetHomeLine(
        @Property(value = "Its name.", example = "\"home 17\"") String name,
        @Property(value = "The verdict.", example = "\"tooEarly\"") SavingsVerdict verdict,
        @Basis(formula = "formula.savings.saltRate", source = "IPMVP")
        @Property(value = "Share of the salt that is saved.", unit = "%", example = "27.4") BigDecimal percent,
        @Basis(formula = "formula.savings.saltRate", source = "IPMVP")
        @Property(value = "Low end of its interval.", unit = "%", example = "18.9") BigDecimal lowPercent,
        @Basis(formula = "formula.savings.saltRate", source = "IPMVP")
        @Property(value = "High end of its interval.", unit = "%", example = "35") BigDecimal highPercent,
        @Basis(formula = "formula.savings.deviation", source = "DERSIMONIAN-LAIRD")
        @Property(value = "How far it lies from the other homes, in standard deviations: above 0 where it saves less.",
                unit = "standard deviations", optional = "for fewer than four homes, or without a verdict", example = "1.3")
        BigDecimal deviation,
        @Property(value = "Whether it is an outlier, which is not pooled: more than three standard deviations off, or salt that changed "
                + "about twentyfold.", example = "false") Boolean outlier,
        @Property(value = "What the verdict should not be read without.", eachOf = SavingsFinding.class) List<SavingsFinding> findings) {

    static FleetHomeLine of(String name, VerifiedHome home, Optional<Double> deviation) {
        return new FleetHomeLine(name, home.verdict(), SavedSalt.percent(home.estimate().share()), SavedSalt.percent(home.estimate().low()),
                SavedSalt.percent(home.estimate().high()), deviation.map(Rounding::answer).orElse(null),
                FleetSavings.isOutlier(home.estimate(), deviation), List.copyOf(home.findings()));
    }
}
