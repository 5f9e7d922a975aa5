// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.answer.cycle.CycleStepLine;
import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.http.TestServer;
import dev.brinebook.model.Model;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.text.Language;
import dev.brinebook.verdict.Step;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the card and the checklist say to set fits together, and is of the control that is there once the verdict is followed. */
class CardFiguresTest {

    private static final int HOUSEHOLDS = 80;
    /** What only a meter has. */
    private static final Set<ControllerSetting> OF_METERS = EnumSet.of(ControllerSetting.TIME_OF_DAY, ControllerSetting.HARDNESS,
            ControllerSetting.CAPACITY, ControllerSetting.METER_VOLUME, ControllerSetting.RESERVE);
    /** Numbers of the answer have six digits. */
    private static final double DIGITS = 2e-4;

    /** Salt = water × what a volume of water dissolves = minutes × flow × that, at every step of the ladder. Source: by hand. */
    @Test
    void saltWaterAndMinutesAgree() {
        Map<Step, Integer> seen = new EnumMap<>(Step.class);
        List<String> requests = HouseholdRequests.first(HOUSEHOLDS);
        for (int i = 0; i < requests.size(); i++) {
            SheetCase sheet = sheet(requests.get(i));
            String name = "seed " + (i + 1) + " " + sheet.step();
            seen.merge(sheet.step(), 1, Integer::sum);
            Optional<SheetCycle> cycle = sheet.cycle();
            assertTrue(cycle.isPresent() || sheet.step() == Step.TREAT_FIRST || sheet.step() == Step.NONE_NEEDED
                    || sheet.step() == Step.REPLACE, name);
            cycle.ifPresent(one -> assertAgrees(one, name));
            if (cycle.isPresent() && sheet.step() != Step.NONE_NEEDED) {
                assertUsesTheSaltOfTheYear(sheet, cycle.get(), name);
            }
            assertOfItsControl(sheet, name);
        }
        assertEquals(EnumSet.allOf(Step.class), seen.keySet(), seen.toString());
    }

    private static void assertAgrees(SheetCycle cycle, String name) {
        double salt = cycle.salt().inBase();
        double water = cycle.refill().water().inBase();
        assertEquals(salt, water * cycle.refill().saltInWater().inBase(), salt * 0.01, name);
        double minutes = cycle.refillMinutes().doubleValue();
        assertEquals(water, minutes * cycle.refill().flow().inBase(), 0.051 / minutes * water + water * DIGITS, name);
        CycleStepLine line = cycle.table().steps().stream().filter(one -> one.step() == CycleStep.Kind.REFILL).findFirst().orElseThrow();
        assertEquals(line.waterTaken(), cycle.refill().water(), name);
        assertEquals(line.flow(), cycle.refill().flow(), name);
    }

    /** The salt of a year, which the letter states, is that of its regenerations. */
    private static void assertUsesTheSaltOfTheYear(SheetCase sheet, SheetCycle cycle, String name) {
        RungAnswer rung = sheet.option(sheet.stepNow()).orElseThrow().rung();
        double each = cycle.salt().inBase();
        assertEquals(rung.salt().inBase(), rung.regenerations().doubleValue() * each, rung.salt().inBase() * 0.01 + 1e-9, name);
    }

    private static void assertOfItsControl(SheetCase sheet, String name) {
        List<CardSettings.Entry> rows = CardSettings.of(sheet).rows();
        Set<ControllerSetting> settings = rows.stream().map(CardSettings.Entry::setting).collect(Collectors.toSet());
        boolean clock = sheet.assessment().found().policy().byClock();
        if (clock && sheet.keepsControl()) {
            assertTrue(settings.stream().noneMatch(OF_METERS::contains), name + settings);
        }
        assertEquals(settings.contains(ControllerSetting.SALT), settings.contains(ControllerSetting.REFILL), name + settings);
        assertEquals(settings.size(), rows.size(), name + " has a setting twice " + settings);
    }

    private static SheetCase sheet(String json) {
        AssessmentRequest request = TestServer.read(json, AssessmentRequest.class);
        Assess.Assessed assessed = Assess.assessed(request, Model.CURRENT);
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        return new SheetCase(request, assessed.answer(), assessed.assessment(), units, Language.all().get(0), Model.CURRENT.version());
    }
}
