package dev.brinebook.api;

import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Reader;
import dev.brinebook.caution.Severity;
import dev.brinebook.wording.Message;
import dev.brinebook.wording.Worded;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

@About("Something a person must be told beside the numbers.")
public record CautionAnswer(
        @Property("Stable code of the caution.") Caution code,
        @Property("How much it matters: stop, warning or info.") Severity severity,
        @Property(value = "One plain sentence to show to the person.", example = "\"Iron is above 0.3 mg/L: it stains.\"")
        Message message,
        @Property(value = "Where the caution comes from.", example = "\"40 CFR 143.3 (2023)\"") String source,
        @Property("Who has to do something about it: the customer, the installer or the authority.") Reader reader,
        @Property(value = "Whether it is one of the few to show first, for this case: every stop, and five in all at most. The others"
                + " are shown behind.", example = "true") Boolean inFront) {

    /** Cautions by their rank, gravest first, each as {@code saying} has it. */
    public static List<CautionAnswer> of(Collection<Caution> cautions, Function<Worded, Message> saying) {
        Set<Caution> inFront = Caution.inFront(cautions);
        return Caution.ordered(cautions).stream().map(caution -> new CautionAnswer(caution, caution.severity(),
                saying.apply(caution), BasisAnswer.cite(caution.sourceKey()), caution.reader(), inFront.contains(caution))).toList();
    }
}
