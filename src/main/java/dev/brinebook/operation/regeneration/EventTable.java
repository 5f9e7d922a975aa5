// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.Unit;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.RegenerationEvent;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** A schedule as a table for spreadsheets: CSV by RFC 4180, a header and a row for every event of every policy. */
final class EventTable {

    static final String MEDIA_TYPE = "text/csv";
    static final String DESCRIPTION = "A CSV table (RFC 4180) in UTF-8 with a header: one row for "
            + "every regeneration and salt purchase of every policy, then the tasks due for any "
            + "policy (bacteria test, service), with an empty policy. Column names include their "
            + "units, which units selects. hour is empty if a regeneration starts immediately. "
            + "Amounts have ten digits, so that their sums round to the totals of the JSON answer. "
            + "Only the JSON answer has hard days, cautions and assumptions. More than " + ScheduleResults.MAX_DATES_OF_A_FILE
            + " regenerations and salt purchases of all policies together are refused. A policy's name that "
            + FormulaGuard.DESCRIPTION;

    private final CsvWriter csv;
    private final AnswerUnits units;
    private final Language language;

    private EventTable(CsvWriter csv, AnswerUnits units, Language language) {
        this.csv = csv;
        this.units = units;
        this.language = language;
    }

    static String of(ScheduleResults foreseen, Language language) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            EventTable table = new EventTable(csv, foreseen.units(), language);
            table.header();
            for (ScheduleResults.Tried policy : foreseen.tried()) {
                table.write(policy, foreseen.saltPlan(policy).map(SaltPlan::purchases).orElse(List.of()));
            }
            foreseen.upkeep().forEach(due -> table.row("", due.date(), "", WireNames.of(due.kind()), "", "", "", "", ""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private void header() {
        csv.writeRecord("policy", "date", "hour", "event", "reason", "salt" + plural(units.mass(0).unit()),
                "water" + plural(units.volume(0).unit()), "capacityThrownAway" + plural(units.capacity(0).unit()), "bags");
    }

    /** Regenerations and purchases by date; a purchase after a regeneration of the same date follows it. */
    private void write(ScheduleResults.Tried policy, List<SaltPlan.SaltPurchase> purchases) {
        String name = FormulaGuard.of(policy.name().in(language));
        String hour = policy.startHour().isPresent() ? Integer.toString(policy.startHour().getAsInt()) : "";
        Regeneration each = policy.outcome().trial().regeneration();
        String salt = amount(units.mass(0).unit(), each.saltGrams() / 1000);
        String water = amount(units.volume(0).unit(), each.waterLitres());
        int bought = 0;
        for (RegenerationEvent event : policy.outcome().events()) {
            while (bought < purchases.size() && purchases.get(bought).date().isBefore(event.date())) {
                buy(name, purchases.get(bought++));
            }
            row(name, event.date(), hour, "regeneration", WireNames.of(event.reason()), salt, water,
                    amount(units.capacity(0).unit(), event.unusedGrams()), "");
        }
        purchases.subList(bought, purchases.size()).forEach(purchase -> buy(name, purchase));
    }

    private void buy(String policy, SaltPlan.SaltPurchase purchase) {
        row(policy, purchase.date(), "", "saltPurchase", "", "", "", "", Integer.toString(purchase.bags()));
    }

    private void row(String policy, LocalDate date, String... rest) {
        csv.writeRecord(policy, date.toString(), rest[0], rest[1], rest[2], rest[3], rest[4], rest[5], rest[6]);
    }

    private static String amount(Unit unit, double inBase) {
        return Rounding.addend(unit.fromBase(inBase)).toPlainString();
    }

    /** US_GALLON is UsGallons. */
    private static String plural(Unit unit) {
        StringBuilder name = new StringBuilder();
        for (String word : ((Enum<?>) unit).name().split("_")) {
            name.append(word.charAt(0)).append(word.substring(1).toLowerCase(Locale.ROOT));
        }
        return name.append('s').toString();
    }
}
