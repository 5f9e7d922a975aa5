// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.sheet.RecordSheet;
import dev.brinebook.sheet.RecordSheet.Line;
import dev.brinebook.sheet.RecordSheet.Section;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** A verified saving, or how long to read, as a sheet to print. */
final class SavingsSheet {

    private static final Message AT_LEAST = Message.of("savingsSheet.atLeast");
    private static final Message AT_MOST = Message.of("savingsSheet.atMost");
    private static final Message A_YEAR = Message.of("savingsSheet.aYear");

    private SavingsSheet() {
    }

    /** The forms, by what answers a request. */
    static List<AnswerForm<SavingsVerificationRequest>> forms(
            Function<SavingsVerificationRequest, SavingsVerificationAnswer> answer) {
        return RecordSheet.forms("well-family", request -> of(answer.apply(request)),
                request -> HomeCountry.units(request.units(), request.country()) == AnswerUnits.METRIC);
    }

    static RecordSheet of(SavingsVerificationAnswer answer) {
        return RecordSheet.of(Message.of("savingsSheet.title"), answer.summary(), answer.modelVersion(), List.of(
                Section.list("findings", Message.of("sheetWords.pleaseKnow"), IntStream.range(0, answer.findings().size())
                        .mapToObj(i -> Line.of("/findings/" + i + "/message", answer.findings().get(i).message())).toList()),
                Section.table("saved", Message.of("savingsSheet.saved"), List.of(Message.of("savingsSheet.what"), A_YEAR, AT_LEAST,
                        AT_MOST), saved(answer)),
                Section.table("salt", Message.of("savingsSheet.saltUsed"), List.of(Message.of("savingsSheet.what"), A_YEAR),
                        salt(answer)),
                Section.table("causes", Message.of("savingsSheet.causes"), List.of(Message.of("savingsSheet.what"), A_YEAR),
                        causes(answer)),
                Section.table("waiting", Message.of("savingsSheet.waiting"), List.of(Message.of("savingsSheet.trueSaving"),
                        Message.of("savingsSheet.evenChance"), Message.of("savingsSheet.likely")), waiting(answer))));
    }

    private static List<Row> saved(SavingsVerificationAnswer answer) {
        List<Row> rows = new ArrayList<>();
        if (answer.salt() != null) {
            SavedSalt salt = answer.salt();
            rows.add(Row.of(Message.of("savingsSheet.saltShare"), percent("/salt/percent", salt.percent()),
                    percent("/salt/lowPercent", salt.lowPercent()), percent("/salt/highPercent", salt.highPercent())));
            rows.add(row("salt", "/salt", salt.savedPerYear(), salt.savedLow(), salt.savedHigh()));
        }
        if (answer.water() != null) {
            rows.add(row("water", "/water", answer.water().savedPerYear(), answer.water().savedLow(), answer.water().savedHigh()));
        }
        if (answer.money() != null) {
            rows.add(row("money", "/money", answer.money().savedPerYear(), answer.money().savedLow(), answer.money().savedHigh()));
        }
        return rows;
    }

    private static Row row(String what, String at, Object aYear, Object low, Object high) {
        return Row.of(Message.of("savingsSheet.kind", what), SheetCell.of(at + "/savedPerYear", aYear), SheetCell.of(at + "/savedLow", low),
                SheetCell.of(at + "/savedHigh", high));
    }

    private static List<Row> salt(SavingsVerificationAnswer answer) {
        return answer.salt() == null ? List.of() : List.of(
                Row.of(Message.of("savingsSheet.before"), SheetCell.of("/salt/beforePerYear", answer.salt().beforePerYear())),
                Row.of(Message.of("savingsSheet.after"), SheetCell.of("/salt/afterPerYear", answer.salt().afterPerYear())));
    }

    private static List<Row> causes(SavingsVerificationAnswer answer) {
        return answer.causes() == null ? List.of() : IntStream.range(0, answer.causes().size()).mapToObj(i -> Row.of(
                Message.of("savingsSheet.cause", answer.causes().get(i).cause().name()),
                SheetCell.of("/causes/" + i + "/saltPerYear", answer.causes().get(i).saltPerYear()))).toList();
    }

    private static List<Row> waiting(SavingsVerificationAnswer answer) {
        return answer.waiting() == null ? List.of() : IntStream.range(0, answer.waiting().size()).mapToObj(i -> {
            SavingsWait wait = answer.waiting().get(i);
            return Row.of(Message.of("pattern.percent", Text.whole(wait.savingPercent().doubleValue())),
                    weeks("/waiting/" + i + "/evenWeeks", wait.evenWeeks()), weeks("/waiting/" + i + "/likelyWeeks", wait.likelyWeeks()));
        }).toList();
    }

    private static SheetCell percent(String at, BigDecimal value) {
        return SheetCell.inWords(at, Message.of("pattern.percent", Text.digits(value.doubleValue())), value);
    }

    private static SheetCell weeks(String at, Integer weeks) {
        return weeks == null ? SheetCell.words(Message.of("savingsSheet.never"))
                : SheetCell.inWords(at, Message.of("savingsSheet.weeks", weeks), BigDecimal.valueOf(weeks));
    }
}
