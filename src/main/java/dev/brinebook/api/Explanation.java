package dev.brinebook.api;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.quantity.Quantity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Gathers, while a request is mapped and answered, what the answer must say about itself. */
public final class Explanation {

    private final Map<String, AssumptionAnswer> assumptions = new LinkedHashMap<>();
    private final List<BasisAnswer> basis = new ArrayList<>();
    private final Set<Caution> cautions = new LinkedHashSet<>();

    /** Records a value taken; the first record of a name stays. */
    public void assume(String name, String value, Origin origin) {
        assumptions.putIfAbsent(name, new AssumptionAnswer(name, value, origin));
    }

    /** The caller's {@code given} number in its base unit, or the default; recorded either way. */
    public double orDefault(String name, Quantity<?> given, double defaultInBase, String defaultText) {
        if (given == null) {
            assume(name, defaultText, Origin.DEFAULT);
            return defaultInBase;
        }
        assume(name, given.value().toPlainString() + " " + given.unit().symbol(), Origin.CALLER);
        return given.inBase();
    }

    /** The caller's {@code given} number, or the default; recorded either way. {@code unit} is empty or words. */
    public double orDefault(String name, Number given, double defaultValue, String unit) {
        String suffix = unit.isEmpty() ? "" : " " + unit;
        if (given == null) {
            assume(name, Text.number(defaultValue) + suffix, Origin.DEFAULT);
            return defaultValue;
        }
        assume(name, Text.number(given.doubleValue()) + suffix, Origin.CALLER);
        return given.doubleValue();
    }

    /** The caller's {@code given} choice, or the default; recorded either way. */
    public <E extends Enum<E>> E orDefault(String name, E given, E defaultValue) {
        E used = given == null ? defaultValue : given;
        assume(name, WireNames.of(used), given == null ? Origin.DEFAULT : Origin.CALLER);
        return used;
    }

    /** Says why the number at {@code pointer} is what it is. {@code sourceKey} stands in the register of sources. */
    public void because(String pointer, String formula, String sourceKey) {
        basis.add(BasisAnswer.of(pointer, formula, sourceKey));
    }

    public void caution(Caution... given) {
        cautions.addAll(List.of(given));
    }

    public void cautions(Collection<Caution> given) {
        cautions.addAll(given);
    }

    public List<AssumptionAnswer> assumptions() {
        return List.copyOf(assumptions.values());
    }

    public List<BasisAnswer> basis() {
        return List.copyOf(basis);
    }

    /** {@code summary}, after the cautions that forbid what it advises: it may be quoted alone. */
    public String behindStops(String summary) {
        return Caution.ordered(cautions).stream().filter(caution -> caution.severity() == Severity.STOP)
                .map(caution -> "Stop: " + caution.message() + " ").collect(Collectors.joining()) + summary;
    }

    public List<CautionAnswer> cautions() {
        return CautionAnswer.of(cautions);
    }
}
