// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.RowNote.Code;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What passed between the readings of a register that counts on, starts again from 0, is misread, or is changed. */
final class RegisterDraws {

    /** A register of unknown size that falls from above this share of the next power of ten has started again. */
    static final double ASSUMED_NEAR_ROLLOVER_SHARE = 0.9;
    /** A register has at least three digits. */
    static final double ASSUMED_LEAST_ROLLOVER = 1_000;

    private final Meter meter;
    private final List<TimedReading> readings;
    private final List<RowNote> notes;
    private final List<TimedReading> kept = new ArrayList<>();
    private final List<MeteredUse> draws = new ArrayList<>();

    private RegisterDraws(List<TimedReading> readings, Meter meter, List<RowNote> notes) {
        this.meter = meter;
        this.notes = notes;
        this.readings = readings.stream().filter(this::belowRollover).toList();
    }

    /**
     * The use between readings, in order; none where it is not known.
     * <pre>V = u (r2 - r1),   V = u (r2 + R - r1) where the register started again</pre>
     * V: litres; u: litres in a unit; r1, r2: readings one after the other; R: the value at which it starts again. Where R
     * is not given it is the next power of ten, 1,000 or more, if r1 was above nine tenths of it.
     *
     * <p>A single reading out of line, with its neighbours in line, is left out. Source: [CP-METER-READING].
     */
    static List<MeteredUse> of(List<TimedReading> readings, Meter meter, List<RowNote> notes) {
        RegisterDraws all = new RegisterDraws(readings, meter, notes);
        for (int i = 0; i < all.readings.size(); i++) {
            all.add(all.readings.get(i), i + 1 < all.readings.size() ? all.readings.get(i + 1) : null);
        }
        return all.draws;
    }

    private boolean belowRollover(TimedReading reading) {
        boolean below = meter.rolloverAt().isEmpty() || reading.value() < meter.rolloverAt().getAsDouble();
        if (!below) {
            note(reading, Code.ABOVE_ROLLOVER);
        }
        return below;
    }

    private void add(TimedReading now, TimedReading next) {
        if (kept.isEmpty()) {
            kept.add(now);
            return;
        }
        TimedReading before = kept.get(kept.size() - 1);
        boolean falls = now.value() < before.value();
        boolean nextGoesOn = next != null && rises(before, next);
        if (falls && nextGoesOn) {
            note(now, Code.REGISTER_DIPS);
        } else if (!falls && !rises(before, now) && nextGoesOn && next.value() < now.value()) {
            note(now, Code.REGISTER_LEAPS);
        } else if (falls && kept.size() > 1 && rises(kept.get(kept.size() - 2), now)) {
            leaveOutLast();
            draw(kept.get(kept.size() - 1), now, 0);
        } else if (!falls && rises(before, now)) {
            draw(before, now, 0);
        } else if (falls && startsAgain(before, now)) {
            note(now, Code.ROLLOVER);
            draw(before, now, rolloverAfter(before).getAsDouble());
        } else {
            note(now, falls ? Code.METER_CHANGED : Code.TOO_MUCH_DRAWN);
            kept.add(now);
        }
    }

    private void draw(TimedReading before, TimedReading now, double turned) {
        draws.add(new MeteredUse(before.moment(), now.moment(), litres(before, now, turned), now.row()));
        kept.add(now);
    }

    /** The last reading stood too high, as its successor shows. */
    private void leaveOutLast() {
        TimedReading last = kept.remove(kept.size() - 1);
        note(last, Code.REGISTER_LEAPS);
        if (!draws.isEmpty() && draws.get(draws.size() - 1).row() == last.row()) {
            draws.remove(draws.size() - 1);
        }
    }

    private boolean rises(TimedReading before, TimedReading now) {
        return now.value() >= before.value() && Meter.plausible(litres(before, now, 0), between(before, now));
    }

    private boolean startsAgain(TimedReading before, TimedReading now) {
        OptionalDouble rollover = rolloverAfter(before);
        return rollover.isPresent()
                && Meter.plausible(litres(before, now, rollover.getAsDouble()), between(before, now));
    }

    private OptionalDouble rolloverAfter(TimedReading before) {
        if (meter.rolloverAt().isPresent()) {
            return meter.rolloverAt();
        }
        double power = ASSUMED_LEAST_ROLLOVER;
        while (power <= before.value()) {
            power *= 10;
        }
        return before.value() >= ASSUMED_NEAR_ROLLOVER_SHARE * power ? OptionalDouble.of(power) : OptionalDouble.empty();
    }

    private double litres(TimedReading before, TimedReading now, double turned) {
        return meter.litresPerUnit() * (now.value() + turned - before.value());
    }

    private static Duration between(TimedReading before, TimedReading now) {
        return Duration.between(before.moment(), now.moment());
    }

    private void note(TimedReading reading, Code code) {
        notes.add(new RowNote(reading.row(), code));
    }
}
