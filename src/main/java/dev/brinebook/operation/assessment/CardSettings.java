// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleStepLine;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.StepMinutesRequest;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Settings to enter, with the reasons that the checklist lists.
 *
 * @param rows in the order of a common menu
 * @param reasons why, R1 first
 */
record CardSettings(List<Entry> rows, List<Message> reasons) {

    /**
     * A setting.
     *
     * @param set what to enter
     * @param before what is entered now; null if that is not known
     * @param assumed what it rests on that nobody measured, or null
     * @param code code of its reason, or null
     */
    record Entry(ControllerSetting setting, SheetCell set, SheetCell before, Guess assumed, String code) {
    }

    /** Collects entries and numbers their reasons. */
    private static final class Collector {

        private final SheetCase sheet;
        private final List<Entry> rows = new ArrayList<>();
        private final List<Message> reasons = new ArrayList<>();

        Collector(SheetCase sheet) {
            this.sheet = sheet;
        }

        void add(ControllerSetting setting, SheetCell set, SheetCell before, Guess guess, Message reason) {
            rows.add(new Entry(setting, set, before, guess == null ? null : guess.in(sheet), reason == null ? null : code(reason)));
        }

        private String code(Message reason) {
            reasons.add(reason);
            return "R" + reasons.size();
        }

        CardSettings collected() {
            return new CardSettings(List.copyOf(rows), List.copyOf(reasons));
        }
    }

    /** What the verdict asks to be entered: all settings of a meter, or those of the present control that change. */
    static CardSettings of(SheetCase sheet) {
        Collector to = new Collector(sheet);
        if (sheet.keepsControl()) {
            KeptControl.add(sheet, to::add);
        } else if (sheet.stepNow().compareTo(Step.SET_RIGHT) >= 0 && sheet.cycle().isPresent()) {
            meter(sheet, to);
        }
        return to.collected();
    }

    private static void meter(SheetCase sheet, Collector to) {
        RecommendedSettings set = sheet.answer().settings();
        ControlRequest now = sheet.request().softener().control();
        boolean other = sheet.replacesBed();
        to.add(ControllerSetting.TIME_OF_DAY, SheetCell.words(SheetWords.TIME_NOW), null, null, null);
        to.add(ControllerSetting.HARDNESS, exact("hardness", set.hardness()), given(other ? null : now.hardnessSetting()), Guess.IRON,
                reason(set, "hardness"));
        to.add(ControllerSetting.CAPACITY, exact("capacity", set.capacity()), given(other ? null : now.capacitySetting()), null,
                reason(set, "capacity"));
        to.add(ControllerSetting.METER_VOLUME, SheetCell.inWords("/settings/meterVolume", ControllerQuantities.meterInWords(
                set.meterVolume()), set.meterVolume().value()), null, null, reason(set, "meterVolume"));
        to.add(ControllerSetting.RESERVE, reserve(set), null, Guess.USE, reason(set, "reserve"));
        to.add(ControllerSetting.SALT, exact("saltPerRegeneration", set.saltPerRegeneration()), other || sheet.guessedSalt() ? null
                : SheetCell.of("/fit/saltPerRegeneration", sheet.answer().fit().saltPerRegeneration()), null, reason(set, "saltDose"));
        steps(sheet, to);
        to.add(ControllerSetting.DAY_OVERRIDE, SheetCell.inWords("/settings/dayOverride", Message.of("settingFinding.days",
                Text.number(set.dayOverride())), BigDecimal.valueOf(set.dayOverride())), null, null, reason(set, "dayOverride"));
        to.add(ControllerSetting.HOUR, hour("/settings/regenerationHour", set.regenerationHour()), other ? null : sheet.resolved(
                ControlRequest.OF_SOFTENER + "/regenerationHour").filter(one -> one.origin() == Resolved.Origin.CALLER)
                .map(one -> SheetCell.words(Message.of("pattern.value", LocalTime.of(one.value().intValue(), 0)))).orElse(null), null,
                reason(set, "regenerationHour"));
    }

    private static void steps(SheetCase sheet, Collector to) {
        StepMinutesRequest now = sheet.replacesBed() ? null : sheet.request().softener().minutes();
        List<CycleStepLine> steps = sheet.answer().cycle().steps();
        for (int i = 0; i < steps.size(); i++) {
            CycleStepLine step = steps.get(i);
            String at = "/cycle/steps/" + i + "/wholeMinutes";
            switch (step.step()) {
                case BACKWASH -> to.add(ControllerSetting.BACKWASH, minutes(at, step), before(now == null ? null : now.backwash()), null,
                        null);
                case BRINE_AND_SLOW_RINSE -> to.add(ControllerSetting.BRINE, minutes(at, step), before(now == null ? null
                        : now.brineAndSlowRinse()), Guess.BRINE_FLOW, null);
                case SECOND_BACKWASH -> to.add(ControllerSetting.SECOND_BACKWASH, minutes(at, step), before(now == null ? null
                        : now.secondBackwash()), null, null);
                case FAST_RINSE -> to.add(ControllerSetting.FAST_RINSE, minutes(at, step), before(now == null ? null : now.fastRinse()),
                        null, null);
                case REFILL -> to.add(ControllerSetting.REFILL, minutes("/settings/refillMinutes",
                        sheet.answer().settings().refillMinutes()), before(now == null ? null : now.refill()), Guess.REFILL_FLOW,
                        reason(sheet.answer().settings(), "refillMinutes"));
            }
        }
    }

    /** In the terms of the controller: a share, days, or a volume. */
    private static SheetCell reserve(RecommendedSettings set) {
        if (set.reservePercent() != null) {
            return SheetCell.inWords("/settings/reservePercent", Message.of("pattern.percent", set.reservePercent()), set.reservePercent());
        }
        return set.reserveDays() == null ? exact("reserve", set.reserve())
                : SheetCell.inWords("/settings/reserveDays", Message.of("settingFinding.days", set.reserveDays()), set.reserveDays());
    }

    private static Message reason(RecommendedSettings set, String setting) {
        return set.reasons().stream().filter(one -> one.setting().equals(setting)).findFirst().orElseThrow().reason();
    }

    /** A setting with every digit that it is set by: rounded once more it might not be one that can be set. */
    private static SheetCell exact(String name, Quantity<?> quantity) {
        return SheetCell.inWords("/settings/" + name, Text.setting(quantity), quantity.value());
    }

    private static SheetCell given(Quantity<?> quantity) {
        return Optional.ofNullable(quantity).map(given -> SheetCell.words(Text.exact(given))).orElse(null);
    }

    private static SheetCell minutes(String at, CycleStepLine step) {
        return minutes(at, BigDecimal.valueOf(step.wholeMinutes()));
    }

    private static SheetCell minutes(String at, BigDecimal minutes) {
        return SheetCell.inWords(at, minutes(minutes), minutes);
    }

    static Message minutes(BigDecimal minutes) {
        return Message.of("settingFinding.minutes", minutes);
    }

    static SheetCell before(BigDecimal minutes) {
        return minutes == null ? null : SheetCell.words(minutes(minutes));
    }

    private static SheetCell hour(String at, int hour) {
        return SheetCell.inWords(at, Message.of("pattern.value", LocalTime.of(hour, 0)), BigDecimal.valueOf(hour));
    }
}
