package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.household.GammaFit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("How well a gamma distribution describes the days.")
public record UseFitAnswer(
        @Property(value = "The Anderson-Darling statistic: how far the days stand from the fitted distribution.",
                min = 0, example = "0.412") BigDecimal andersonDarling,
        @Property("good, doubtful or poor: days of a fitted gamma distribution pass the statistic more often than one time in"
                + " twenty, more often than one in a hundred, or less often.") GammaFit.Verdict verdict,
        @Property(value = "The same as a sentence.", example = "\"Gamma describes the days well.\"") Message message) {

    static UseFitAnswer of(double statistic, double shape) {
        GammaFit.Verdict verdict = GammaFit.verdict(statistic, shape);
        return new UseFitAnswer(Rounding.answer(statistic), verdict, switch (verdict) {
            case GOOD -> Message.of("Gamma describes the days well: days drawn from it would differ so much more often than one"
                    + " time in twenty.");
            case DOUBTFUL -> Message.of("Gamma describes the days in a rough way: days drawn from it would differ so much less"
                    + " often than one time in twenty.");
            case POOR -> Message.of("Gamma does not describe the days: take what rests on it, such as a reserve, as rough, or"
                    + " send the days themselves.");
        });
    }
}
