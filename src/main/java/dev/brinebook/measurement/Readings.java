// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import dev.brinebook.randomness.Quantile;
import dev.brinebook.randomness.Sample;
import dev.brinebook.randomness.Uncertain;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Readings by their names. Immutable.
 *
 * @param <K> the names
 */
public final class Readings<K extends Enum<K>> {

    /** Draws of a simulation. */
    public static final int DRAWS = 1_000;

    private static final double LOW = 0.025;
    private static final double HIGH = 0.975;

    private final Class<K> names;
    private final Map<K, Reading> readings;

    /** Readings of some of the names. */
    public Readings(Class<K> names, Map<K, Reading> readings) {
        this.names = names;
        this.readings = new EnumMap<>(names);
        this.readings.putAll(readings);
    }

    /** Whether there is a reading of each of these names. */
    public boolean has(List<K> wanted) {
        return readings.keySet().containsAll(wanted);
    }

    /** The reading of a name that there is. */
    public Reading get(K name) {
        return readings.get(name);
    }

    /**
     * A quantity with its uncertainty, by propagation and by simulation.
     *
     * <pre>u² = Σ Z_i²,   Z_i = (f(x_i + u_i) − f(x_i − u_i)) / 2</pre>
     *
     * <p>f formula; x_i readings and u_i their standard uncertainties.
     * Validity: readings that do not depend on each other; a formula about linear within ± u_i, else the simulation differs.
     * Source: [GUM] 5.1.2, and 5.1.3 note 2 for Z_i; [JCGM-101] 5 for the simulation.
     * Deviation: {@value #DRAWS} draws by Latin hypercubes where [JCGM-101] 7.2 advises a million at random.
     *
     * @param formula needs no reading that is not there
     * @param seed of the simulation
     */
    public Measured<K> measure(Formula<K> formula, long seed) {
        double value = formula.value(name -> readings.get(name).value());
        Map<K, Double> contributions = new EnumMap<>(names);
        double variance = 0;
        for (Map.Entry<K, Reading> entry : readings.entrySet()) {
            double contribution = (moved(formula, entry.getKey(), 1) - moved(formula, entry.getKey(), -1)) / 2;
            if (contribution != 0) {
                contributions.put(entry.getKey(), contribution);
                variance += contribution * contribution;
            }
        }
        return new Measured<>(value, Math.sqrt(variance), contributions, simulate(formula, List.copyOf(contributions.keySet()), seed));
    }

    private double moved(Formula<K> formula, K name, int direction) {
        double moved = readings.get(name).value() + direction * readings.get(name).standardUncertainty();
        return formula.value(other -> other == name ? moved : readings.get(other).value());
    }

    private Measured.Simulated simulate(Formula<K> formula, List<K> drawn, long seed) {
        List<Uncertain> inputs = drawn.stream().map(name -> readings.get(name).distribution()).toList();
        int[] place = new int[names.getEnumConstants().length];
        Arrays.fill(place, -1);
        drawn.forEach(name -> place[name.ordinal()] = drawn.indexOf(name));
        Sample sample = Sample.of(inputs, () -> (values, draw) -> new double[] {formula.value(
                name -> place[name.ordinal()] < 0 ? readings.get(name).value() : values[place[name.ordinal()]])}, DRAWS, 0, seed);
        double[] sorted = sample.result(0);
        double mean = Arrays.stream(sorted).sum() / sorted.length;
        double squares = Arrays.stream(sorted).map(one -> (one - mean) * (one - mean)).sum();
        Arrays.sort(sorted);
        return new Measured.Simulated(mean, Math.sqrt(squares / (sorted.length - 1)), Quantile.ofSorted(sorted, LOW),
                Quantile.ofSorted(sorted, HIGH));
    }
}
