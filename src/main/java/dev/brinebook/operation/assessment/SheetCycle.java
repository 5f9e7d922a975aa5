// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The regeneration that runs once the verdict is followed. The answer has that of a meter; a control that is kept runs another one.
 *
 * @param table its steps
 * @param refill its brine refill
 * @param refillMinutes minutes of refill, as the controller takes them
 * @param salt its salt, in the unit of the answer
 * @param resin the bed that it regenerates, which is another one where the bed is replaced
 * @param answered whether the answer has the same
 */
record SheetCycle(CycleTable table, RefillSetting refill, BigDecimal refillMinutes, MassQuantity salt, VolumeQuantity resin,
        boolean answered) {

    /** Of the control that is kept or of the meter; absent where none runs, or no size of softener is known that serves. */
    static Optional<SheetCycle> of(Assessment assessment, AssessmentAnswer answer, Step step, boolean keepsControl, AnswerUnits units) {
        Optional<SoftenerSettings> advised = assessment.ladder().rung(step).option().map(Rung.Option::setup);
        if (answer.cycle() == null || advised.isEmpty()) {
            return Optional.empty();
        }
        if (!keepsControl) {
            return Optional.of(new SheetCycle(answer.cycle(), answer.refill(), answer.settings().refillMinutes(),
                    answer.settings().saltPerRegeneration(), resin(advised.get(), units), true));
        }
        SoftenerSettings kept = kept(assessment, advised.get(), step == Step.SET_RIGHT);
        DesignConditions duty = assessment.duty();
        Cycle cycle = kept.cycle(duty.water().temperatureCelsius());
        CycleStep refill = cycle.step(CycleStep.Kind.REFILL);
        return Optional.of(new SheetCycle(CycleTable.of(cycle, units), RefillSetting.of(refill, kept.softener().salt(),
                duty.water().temperatureCelsius(), units), new ControllerQuantities(duty, units).refillMinutes(refill.minutes()),
                units.mass(kept.softener().saltGrams(kept.saltDoseGramsPerLitre()) / 1000), resin(kept, units), false));
    }

    private static VolumeQuantity resin(SoftenerSettings setup, AnswerUnits units) {
        return units.resinVolume(setup.softener().bed().resinLitres());
    }

    /**
     * What is set on the present control, with what the findings correct, and the dose of the clock set right. Its refill is that of
     * its salt: minutes without a known flow say nothing of it.
     */
    private static SoftenerSettings kept(Assessment assessment, SoftenerSettings advised, boolean corrected) {
        SoftenerSettings found = assessment.found().setup();
        Map<CycleStep.Kind, Double> minutes = new HashMap<>(found.minutes());
        minutes.remove(CycleStep.Kind.REFILL);
        SoftenerSettings kept = found.withDose(corrected ? advised.saltDoseGramsPerLitre() : found.saltDoseGramsPerLitre(), minutes);
        for (Finding finding : assessment.findings()) {
            if (corrected || finding.code().purpose() == Finding.Purpose.PROTECT) {
                kept = with(finding, kept);
            }
        }
        return kept;
    }

    private static SoftenerSettings with(Finding finding, SoftenerSettings kept) {
        if (finding.setting() == Setting.BACKWASH) {
            return kept.with(kept.softener().withDrain(OptionalDouble.of(finding.shouldBe())));
        }
        if (finding.setting() == Setting.SLOW_RINSE) {
            Map<CycleStep.Kind, Double> longer = new HashMap<>(kept.minutes());
            longer.put(CycleStep.Kind.BRINE_AND_SLOW_RINSE, finding.shouldBe());
            return kept.withDose(kept.saltDoseGramsPerLitre(), longer);
        }
        return kept;
    }

    /** A value, with its place in the answer where it is there. */
    SheetCell cell(String at, Object value) {
        return answered ? SheetCell.of(at, value) : SheetCell.words(value);
    }
}
