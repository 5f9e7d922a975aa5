// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.exchange;

import dev.brinebook.api.Violation;
import dev.brinebook.http.problem.Problem;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.model.Model;
import dev.brinebook.text.Message;
import io.javalin.http.Context;
import java.util.List;

/** The header by which a caller chooses a version of the formulas and data, and by which an answer says which it was. */
public final class ModelHeader {

    public static final String NAME = "Model-Version";

    /** What can be said again of what was received. */
    private static final String HARMLESS = "[A-Za-z0-9.]{1,20}";

    private ModelHeader() {
    }

    /**
     * The model asked for, which the answer then names; the current one where none is.
     *
     * @throws ProblemException when that version cannot be called
     */
    public static Model choose(Context context) {
        List<String> asked = ListHeader.of(context, NAME);
        if (asked.size() > 1) {
            throw unknown(null);
        }
        Model model = asked.isEmpty() ? Model.CURRENT : Model.of(asked.get(0)).orElseThrow(() -> unknown(asked.get(0)));
        context.header(NAME, model.version());
        return model;
    }

    /** The same for an answer that may be kept: whoever keeps it must look at the header (RFC 9110, section 12.5.5). */
    public static Model chooseForCaches(Context context) {
        context.res().addHeader("Vary", NAME);
        return choose(context);
    }

    private static ProblemException unknown(String asked) {
        Message mustBe = Message.of("modelHeader.mustOne", NAME, String.join(", ", Model.versions()));
        String received = asked != null && asked.matches(HARMLESS) ? asked : null;
        return new ProblemException(ProblemType.UNKNOWN_MODEL_VERSION, mustBe, List.of(Problem.Fault.ofHeader(NAME, new Violation("",
                Violation.Code.UNKNOWN_VALUE, mustBe, Violation.names(Model.versions()), null, received))));
    }
}
