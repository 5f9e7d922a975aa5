package dev.brinebook.api;

import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.wording.Message;
import java.util.Collection;
import java.util.List;

@About("Something a person must be told beside the numbers.")
public record CautionAnswer(
        @Property("Stable code of the caution.") Caution code,
        @Property("How much it matters: stop, warning or info.") Severity severity,
        @Property(value = "One plain sentence to show to the person.", example = "\"Iron is above 0.3 mg/L: it stains.\"")
        Message message,
        @Property(value = "Where the caution comes from.", example = "\"40 CFR 143.3 (2023)\"") String source) {

    /** Cautions in order, gravest first. */
    public static List<CautionAnswer> of(Collection<Caution> cautions) {
        return Caution.ordered(cautions).stream().map(caution -> new CautionAnswer(caution, caution.severity(),
                Message.saying(caution), BasisAnswer.cite(caution.sourceKey()))).toList();
    }
}
