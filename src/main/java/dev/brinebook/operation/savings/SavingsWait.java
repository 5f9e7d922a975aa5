// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.savings.SavingsGoal;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.StartedBy;
import dev.brinebook.savings.UseScatter;
import dev.brinebook.savings.WaitingTime;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;

@SchemaDescription("How long to read after the change until there is a verdict, for one true saving.")
public record SavingsWait(
        @Property(value = "The true saving of salt.", min = 0, max = 100, unit = "%", example = "30") BigDecimal savingPercent,
        @Property(value = "Weeks until a verdict has an even chance.", optional = "if waiting alone gives none within three years", min = 1,
                unit = "weeks", example = "9") Integer evenWeeks,
        @Property(value = "Weeks until a verdict has a chance of 80 %.", optional = "if waiting alone gives none within three years",
                min = 1, unit = "weeks", example = "24") Integer likelyWeeks) {

    static final int MOST = 4;
    private static final double[] WITHOUT_PROMISE = {0.1, 0.2, 0.3, 0.5};

    static List<SavingsWait> of(SavingsPeriod before, StartedBy after, UseScatter scatter, SavingsGoal goal) {
        DoubleStream savings = goal.promised() == 0 ? DoubleStream.of(WITHOUT_PROMISE)
                : DoubleStream.of(goal.promised(), goal.promised() / 2, 0);
        return savings.mapToObj(saving -> new SavingsWait(SavedSalt.percent(saving),
                weeks(WaitingTime.beforehand(before, after, saving, scatter, goal, false)),
                weeks(WaitingTime.beforehand(before, after, saving, scatter, goal, true)))).toList();
    }

    static Integer weeks(OptionalInt weeks) {
        return weeks.isPresent() ? weeks.getAsInt() : null;
    }
}
