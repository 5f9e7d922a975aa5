// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.util.EnumMap;
import java.util.Map;

/** Compares the existing control and a metered control of a softener in the same household. */
public final class ControlTrial {

    private ControlTrial() {
    }

    /**
     * The years now and converted, with the defaults of the metered control recorded in {@code explanation}.
     *
     * @param asFound the existing softener and its settings
     * @param duty the days to try it on
     * @param metered the new control
     * @param saltDose the new dose, or null for the present dose
     */
    public static ConvertedYears of(SoftenerSettings asFound, DesignConditions duty, ControlRequest metered, SaltDoseQuantity saltDose,
            Explanation explanation) {
        SaltDoseQuantity existing = AnswerUnits.of(explanation).saltDose(asFound.saltDoseGramsPerLitre());
        explanation.assume(saltDose == null ? Resolved.of("/meteredSaltDose", existing).byDefault("REQUEST")
                .noting(Message.of("assumed.payback.existingSaltDose")) : Resolved.of("/meteredSaltDose", saltDose));
        if (saltDose == null) {
            return ConvertedYears.of(asFound, meter(metered, asFound, duty, explanation), duty);
        }
        SoftenerCase.requireCapacity(asFound.softener(), saltDose.inBase(), "/meteredSaltDose");
        SoftenerSettings redosed = asFound.withDose(saltDose.inBase(), withoutRefill(asFound.minutes()));
        SoftenerSettings converted = redosed.with(meter(metered, redosed, duty, explanation));
        Policy atOldDose = meter(withoutCapacity(metered), asFound, duty, new Explanation());
        return ConvertedYears.of(asFound, atOldDose, converted, duty);
    }

    /** The control in the domain. */
    private static Policy meter(ControlRequest control, SoftenerSettings setup, DesignConditions duty, Explanation explanation) {
        DosedSoftener dosed = DosedSoftener.designed(setup.softener(), setup.countedDoseGramsPerLitre(),
                duty.water().temperatureCelsius());
        return control.toPolicy("/metered", dosed, duty, explanation);
    }

    /** The minutes of the old refill would dissolve the old dose, so the refill follows from the new one. */
    private static Map<CycleStep.Kind, Double> withoutRefill(Map<CycleStep.Kind, Double> minutes) {
        Map<CycleStep.Kind, Double> kept = new EnumMap<>(CycleStep.Kind.class);
        kept.putAll(minutes);
        kept.remove(CycleStep.Kind.REFILL);
        return kept;
    }

    /** A capacity set for the new dose says nothing of the old one: there the meter is set to the capacity that the old dose restores. */
    private static ControlRequest withoutCapacity(ControlRequest c) {
        return new ControlRequest(c.kind(), c.everyDays(), c.weekdays(), c.hardnessSetting(), null, c.reserve(),
                c.dayOverride(), c.regenerationHour());
    }
}
