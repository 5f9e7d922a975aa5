// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.api.Text;
import dev.brinebook.request.softener.StepMinutesRequest;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Settings of a control that is kept: those that change, and nothing of a meter that is not there. */
final class KeptControl {

    /** A smaller share of the dose is no other dose. */
    private static final double SAME_DOSE_SHARE = 5e-3;

    /** Takes one setting. */
    interface Taker {

        void add(ControllerSetting setting, SheetCell set, SheetCell before, Guess guess, Message reason);
    }

    private record Line(ControllerSetting setting, SheetCell set, SheetCell before, Guess guess, Message reason) {
    }

    private final SheetCase sheet;
    private final ExistingSoftener found;
    private final SoftenerSettings advised;
    private final SheetCycle cycle;

    private KeptControl(SheetCase sheet, SheetCycle cycle) {
        this.sheet = sheet;
        this.cycle = cycle;
        found = sheet.assessment().found();
        advised = sheet.assessment().ladder().rung(sheet.stepNow()).option().map(Rung.Option::setup).orElse(found.setup());
    }

    /** In the order of a common menu: of a clock set right all that changes, else what protects the bed. */
    static void add(SheetCase sheet, Taker to) {
        sheet.cycle().ifPresent(cycle -> new KeptControl(sheet, cycle).lines().stream().sorted(Comparator.comparing(Line::setting))
                .forEach(line -> to.add(line.setting(), line.set(), line.before(), line.guess(), line.reason())));
    }

    private List<Line> lines() {
        boolean corrected = sheet.stepNow() == Step.SET_RIGHT;
        List<Line> lines = new ArrayList<>();
        List<SettingFinding> findings = sheet.answer().findings();
        IntStream.range(0, findings.size()).filter(i -> corrected || findings.get(i).code().purpose() == Finding.Purpose.PROTECT)
                .filter(i -> !isOfSalt(findings.get(i).setting())).filter(i -> isFirst(i, findings))
                .forEach(i -> lines.add(line(i, findings.get(i))));
        if (corrected && otherDose()) {
            lines.add(new Line(ControllerSetting.SALT, SheetCell.words(cycle.salt()), presentSalt(), null, why(Setting.SALT_DOSE)));
            lines.add(refill());
        }
        if (corrected && finding(Setting.INTERVAL).isEmpty()) {
            interval().ifPresent(days -> lines.add(new Line(ControllerSetting.INTERVAL, SheetCell.words(days(days)), null, null, null)));
        }
        return lines;
    }

    private static boolean isOfSalt(Setting setting) {
        return setting == Setting.SALT_DOSE || setting == Setting.REFILL;
    }

    /** A setting that two findings change is entered once. */
    private static boolean isFirst(int i, List<SettingFinding> findings) {
        return findings.stream().limit(i).noneMatch(one -> one.setting() == findings.get(i).setting());
    }

    private static Line line(int i, SettingFinding finding) {
        String at = "/findings/" + i;
        return new Line(ControllerSetting.of(finding.setting()), SheetCell.of(at + "/shouldBe", finding.shouldBe()),
                SheetCell.of(at + "/set", finding.set()), null, finding.why());
    }

    /** Whether the salt that reaches the bed changes, or nobody knows whether it does. */
    private boolean otherDose() {
        double dose = advised.saltDoseGramsPerLitre();
        return sheet.guessedSalt() || Math.abs(found.setup().saltDoseGramsPerLitre() - dose) > SAME_DOSE_SHARE * dose
                || Math.abs(found.statedDoseGramsPerLitre() - dose) > SAME_DOSE_SHARE * dose;
    }

    private SheetCell presentSalt() {
        return sheet.guessedSalt() ? null : SheetCell.of("/fit/saltPerRegeneration", sheet.answer().fit().saltPerRegeneration());
    }

    /** Most valves take the salt as minutes of refill: other salt is other minutes. Source: common practice. */
    private Line refill() {
        StepMinutesRequest now = sheet.request().softener().minutes();
        return new Line(ControllerSetting.REFILL, SheetCell.words(CardSettings.minutes(cycle.refillMinutes())),
                CardSettings.before(now == null ? null : now.refill()), Guess.REFILL_FLOW,
                Message.of("recommendedSettings.doseDissolvesWaterFlows", Text.rounded(cycle.refill().water()),
                        Text.rounded(cycle.refill().flow())));
    }

    /** The interval of the clock set right, where it is another one, or the present one was not read. */
    private OptionalInt interval() {
        OptionalInt days = advised.policy().everyDays();
        boolean same = days.equals(found.policy().everyDays()) && !found.unknown().contains(Setting.INTERVAL);
        return same ? OptionalInt.empty() : days;
    }

    private static Message days(int days) {
        return Message.of("settingFinding.days", Text.number(days));
    }

    private Optional<SettingFinding> finding(Setting setting) {
        return sheet.answer().findings().stream().filter(one -> one.setting() == setting).findFirst();
    }

    private Message why(Setting setting) {
        return finding(setting).map(SettingFinding::why).orElse(null);
    }
}
