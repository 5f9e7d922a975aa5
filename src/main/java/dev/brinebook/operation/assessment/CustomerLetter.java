// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Reader;
import dev.brinebook.caution.Severity;
import dev.brinebook.sheet.Bar;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A letter of one page to the customer.
 *
 * @param say fixed words
 * @param head texts and dates of the job
 * @param description one sentence about the page
 */
record CustomerLetter(Map<String, SheetWords> say, SheetCase.Head head, Message description, List<Sentence> found,
        List<Sentence> suggested, List<Message> columns, List<Row> table, List<Sentence> chartTitle, List<Bar> chart,
        List<Sentence> changes,
        List<Sentence> otherwise, List<Message> cautions, List<Row> measured, List<Row> assumed) {

    private static final int MOST_CAUTIONS = 3;
    /** So many, where nothing is more than a note. */
    private static final int MOST_NOTES = 2;
    /** What is on the letter in other words, as days of hard water and its last line, or is for the installer alone. */
    private static final Set<Caution> SAID_ELSEWHERE = Set.of(Caution.RUNS_HARD, Caution.LOCAL_CODE_DECIDES,
            Caution.EFFICIENCY_NOT_CERTIFIED, Caution.SETTINGS_BEFORE_PARTS, Caution.UNSOFTENED_TAPS,
            Caution.TANK_SIZE_NOT_GIVEN);

    /** What does not concern who does not soften. */
    private static final Set<Caution> OF_SOFTENING = Set.of(Caution.SEPTIC_SYSTEM, Caution.SEWER_SALT_LIMITS, Caution.IRON_BEFORE_RESIN,
            Caution.SODIUM_RESTRICTED_DIET, Caution.SODIUM_TASTE, Caution.POTASSIUM_KIDNEY_HEART, Caution.LEAD_COPPER_PLUMBING,
            Caution.IDLE_BED_WITH_IRON, Caution.LOW_DOSE_WILL_NOT_HOLD, Caution.CHLORINE_RESIN_LIFE);

    static CustomerLetter of(SheetCase sheet) {
        LetterFigures figures = LetterFigures.of(sheet);
        LetterSentences sentences = new LetterSentences(figures);
        return new CustomerLetter(SheetWords.all(), sheet.head(), sheet.answer().verdict().sentence(), sentences.found(),
                sentences.suggested(), figures.heads(), figures.rows(), figures.chart().isEmpty() ? List.of()
                : List.of(figures.chartTitle()), figures.chart(), sentences.changes(), sentences.otherwise(),
                cautions(sheet), measured(sheet), assumed(sheet));
    }

    /** Every stop, the warnings in front whoever sees to them, then what the customer must see to. */
    private static List<Message> cautions(SheetCase sheet) {
        List<CautionAnswer> all = sheet.answer().cautions().stream().filter(one -> !SAID_ELSEWHERE.contains(one.code()))
                .filter(one -> sheet.step() != Step.NONE_NEEDED || !OF_SOFTENING.contains(one.code())).toList();
        List<CautionAnswer> wanted = all.stream().filter(one -> isSerious(one) && one.inFront() || one.reader() != Reader.INSTALLER)
                .sorted(Comparator.comparing(CautionAnswer::severity)).toList();
        long stops = wanted.stream().filter(one -> one.severity() == Severity.STOP).count();
        long serious = wanted.stream().filter(CustomerLetter::isSerious).count();
        return wanted.stream().limit(Math.max(stops, Math.min(MOST_CAUTIONS, Math.max(MOST_NOTES, serious))))
                .map(CautionAnswer::message).toList();
    }

    private static boolean isSerious(CautionAnswer caution) {
        return caution.severity() != Severity.INFO;
    }

    private static List<Row> measured(SheetCase sheet) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(Message.of(SheetWords.HARDNESS), sheet.tested()));
        if (sheet.request().water().iron() != null) {
            rows.add(Row.of(Message.of(SheetWords.IRON), SheetCell.words(Text.exact(sheet.request().water().iron()))));
        }
        if (sheet.request().household().people() != null) {
            rows.add(Row.of(Message.of(SheetWords.PEOPLE), SheetCell.words(sheet.request().household().people())));
        }
        if (!sheet.guessed("/household/usePerPerson")) {
            rows.add(Row.of(Message.of(SheetWords.WATER_A_DAY), SheetCell.of("/demand/dailyUse", sheet.answer().demand().dailyUse())));
        }
        if (!sheet.guessedSalt()) {
            rows.add(salt(sheet));
        }
        return rows;
    }

    private static Row salt(SheetCase sheet) {
        return Row.of(Message.of(SheetWords.SALT_EACH), SheetCell.of("/fit/saltPerRegeneration",
                sheet.answer().fit().saltPerRegeneration()));
    }

    private static List<Row> assumed(SheetCase sheet) {
        List<Row> rows = new ArrayList<>();
        if (sheet.guessed("/water/iron")) {
            rows.add(Row.of(Message.of(SheetWords.IRON), SheetCell.words(SheetWords.NONE)));
        }
        if (sheet.guessed("/household/usePerPerson")) {
            rows.add(Row.of(Message.of(SheetWords.WATER_A_DAY), SheetCell.of("/demand/dailyUse", sheet.answer().demand().dailyUse())));
        }
        if (sheet.guessedSalt()) {
            rows.add(salt(sheet));
        }
        prices(SheetWords.SALT_PRICE, "/prices/saltBag", sheet, rows);
        prices(SheetWords.WATER_PRICE, "/prices/water", sheet, rows);
        return rows;
    }

    /** A price that nobody gave is the usual one; where no bill comes, as from a well, there is nothing to say. */
    private static void prices(SheetWords label, String pointer, SheetCase sheet, List<Row> rows) {
        sheet.resolved(pointer).filter(one -> one.origin() != Resolved.Origin.CALLER && one.value().signum() > 0)
                .ifPresent(one -> rows.add(Row.of(Message.of(label), SheetCell.words(SheetWords.USUAL))));
    }
}
