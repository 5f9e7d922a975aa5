// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Collects assumptions and basis of an answer, while its request is mapped and answered. */
public final class Explanation {

    /** Values assumed, and entries of the basis, of one answer at most: an entry of the basis is of all elements of a list. */
    public static final int MOST_ENTRIES = 1_000;

    private final Map<String, Resolved> resolved = new LinkedHashMap<>();
    private final List<BasisAnswer> basis = new ArrayList<>();
    private final Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    private final Function<Localizable, Message> saying;
    private final boolean metric;
    private HardnessUnit hardnessUnit;

    /** In US units. */
    public Explanation() {
        this(Message::of, false);
    }

    /**
     * A text in US or in metric units.
     *
     * @param saying the words in these units
     * @param metric whether they are metric
     */
    public Explanation(Function<Localizable, Message> saying, boolean metric) {
        this.saying = saying;
        this.metric = metric;
        this.hardnessUnit = metric ? HardnessUnit.MG_PER_L : HardnessUnit.GPG;
    }

    /** The same, which states hardness in {@code unit}. */
    public Explanation statingHardnessIn(HardnessUnit unit) {
        hardnessUnit = unit;
        return this;
    }

    /** The unit that sentences state a hardness in: the unit of the water test where it has one of its own, else the country's. */
    public HardnessUnit hardnessUnit() {
        return hardnessUnit;
    }

    /** What {@code worded} says, in the units of the answer. */
    public Message saying(Localizable worded) {
        return saying.apply(worded);
    }

    /** The message for the units of the answer, where its text names units of its own. */
    public Message inUnits(Message message) {
        return message.inMetricUnits(metric);
    }

    /** Records what an input came to; the first record of a place stays. */
    public void assume(Resolved input) {
        resolved.putIfAbsent(input.place(), input);
    }

    /** The {@code given} quantity in its base unit, or {@code other}, which is shown as {@code otherwise}; recorded either way. */
    public double resolve(Quantity<?> given, double other, Resolved otherwise) {
        assume(given == null ? otherwise : Resolved.of(otherwise.place(), given));
        return given == null ? other : given.inBase();
    }

    /** The {@code given} number, or {@code other}, which is shown as {@code otherwise}; recorded either way. */
    public double resolve(Number given, double other, Resolved otherwise) {
        assume(given == null ? otherwise : Resolved.of(otherwise.place(), given, otherwise.unit()));
        return given == null ? other : given.doubleValue();
    }

    /** The {@code given} number, or that of {@code otherwise}; recorded either way. */
    public double resolve(Number given, Resolved otherwise) {
        return resolve(given, otherwise.value().doubleValue(), otherwise);
    }

    /** The {@code given} choice, or the default; recorded either way. */
    public <E extends Enum<E>> E resolve(String pointer, E given, E byDefault, String sourceKey) {
        assume(given == null ? Resolved.of(pointer, byDefault).byDefault(sourceKey) : Resolved.of(pointer, given));
        return given == null ? byDefault : given;
    }

    public boolean isMetric() {
        return metric;
    }

    /**
     * Gives formula and source of the number at {@code pointer}, where they depend on the case; {@link Basis} has those that do not.
     * {@code sourceKey} is a key of the register of sources.
     */
    public void because(String pointer, Message formula, String sourceKey) {
        basis.add(BasisAnswer.of(pointer, formula, sourceKey));
    }

    /** Says of numbers that they are those of the request, in the units of the answer. [REQUEST]. */
    public void given(String... pointers) {
        for (String pointer : pointers) {
            because(pointer, Message.of("formula.api.givenOrDefaultListed"), "REQUEST");
        }
    }

    public void caution(Caution... given) {
        cautions.addAll(List.of(given));
    }

    public void cautions(Collection<Caution> given) {
        cautions.addAll(given);
    }

    public List<Resolved> assumptions() {
        return List.copyOf(resolved.values());
    }

    /** What was composed for this case; {@link AnswerBasis} adds what is the same for all. */
    public List<BasisAnswer> basis() {
        return List.copyOf(basis);
    }

    /** {@code summary}, after the cautions that forbid its advice or question its input, so that it can be quoted alone. */
    public Message behindStops(Message summary) {
        List<Caution> given = Caution.ordered(cautions);
        return Message.later(() -> behindStops(given, summary));
    }

    private Message behindStops(List<Caution> given, Message summary) {
        Stream<Message> first = given.stream()
                .filter(caution -> caution.severity() == Severity.STOP || Caution.OF_INPUT.contains(caution))
                .map(caution -> caution.severity() == Severity.STOP ? Message.of("explanation.stop", saying.apply(caution))
                        : Message.of("explanation.checkFirst", saying.apply(caution)));
        return Message.sentences(Stream.concat(first, Stream.of(summary)).toList());
    }

    public List<CautionAnswer> cautions() {
        return CautionAnswer.of(cautions, saying);
    }
}
