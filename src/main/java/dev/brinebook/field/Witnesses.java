// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.measurement.Combination;
import dev.brinebook.measurement.Formula;
import dev.brinebook.measurement.Measured;
import dev.brinebook.measurement.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Several answers to one question, and what they say together.
 *
 * @param quantities that answer it, at least one
 * @param combination whether they agree, and their weights
 * @param formula of their mean; empty where they contradict each other
 * @param mean with the uncertainty of what they share; empty where they contradict each other
 */
public record Witnesses(List<FieldQuantity> quantities, Combination combination, Optional<Formula<ReadingCode>> formula,
        Optional<Measured<ReadingCode>> mean) {

    public Witnesses {
        quantities = List.copyOf(quantities);
    }

    /** One answer. */
    record Answer(FieldQuantity quantity, Measured<ReadingCode> measured, Formula<ReadingCode> formula) {
    }

    /** What there is of some quantities; empty where there is none. */
    static Optional<Witnesses> of(List<FieldQuantity> wanted, Map<FieldQuantity, Measured<ReadingCode>> measured,
            Readings<ReadingCode> readings, FieldSetup setup, long seed) {
        return of(wanted.stream().filter(measured::containsKey)
                .map(quantity -> new Answer(quantity, measured.get(quantity), quantity.formula(setup))).toList(), readings, seed);
    }

    /** The answers that there are; readings in common count once in the uncertainty of the mean. */
    static Optional<Witnesses> of(List<Answer> answers, Readings<ReadingCode> readings, long seed) {
        if (answers.isEmpty()) {
            return Optional.empty();
        }
        Combination combination = Combination.of(answers.stream().mapToDouble(answer -> answer.measured.value()).toArray(),
                answers.stream().mapToDouble(answer -> answer.measured.standardUncertainty()).toArray());
        List<FieldQuantity> quantities = answers.stream().map(Answer::quantity).toList();
        if (!combination.hasMean()) {
            return Optional.of(new Witnesses(quantities, combination, Optional.empty(), Optional.empty()));
        }
        double[] weights = combination.weights();
        List<Formula<ReadingCode>> formulas = new ArrayList<>(answers.stream().map(Answer::formula).toList());
        Formula<ReadingCode> mean = x -> {
            double sum = 0;
            for (int i = 0; i < weights.length; i++) {
                sum += weights[i] == 0 ? 0 : weights[i] * formulas.get(i).value(x);
            }
            return sum;
        };
        return Optional.of(new Witnesses(quantities, combination, Optional.of(mean), Optional.of(readings.measure(mean, seed))));
    }

    /** The answer that contradicts the others, which agree. */
    public Optional<FieldQuantity> leftOut() {
        return combination.leftOut().isPresent() ? Optional.of(quantities.get(combination.leftOut().getAsInt())) : Optional.empty();
    }
}
