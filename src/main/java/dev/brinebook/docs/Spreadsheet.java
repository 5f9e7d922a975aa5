// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Contract;

/**
 * How a spreadsheet gets the answers of an operation.
 *
 * @param formula a cell's formula that gets the answer of the GET form; empty where there is none for values of cells
 * @param template the address of the table to fill in; empty where requests do not fit a table
 * @param call the call in a shell that sends that table and keeps the answers; empty like the template
 */
record Spreadsheet(String formula, String template, String call) {

    static Spreadsheet of(Operation<?, ?> operation) {
        boolean cells = !operation.query().isEmpty() && operation.query().stream().noneMatch(Operation.QueryParameter::isWhole);
        String formula = cells ? "=WEBSERVICE(\"" + Call.get(operation).address() + "\")" : "";
        if (CsvColumns.missing(operation.requestType()).isPresent()) {
            return new Spreadsheet(formula, "", "");
        }
        String bulk = "http://" + Call.HOST + Contract.BULK_PATH.replaceFirst("\\{.*}", operation.id());
        return new Spreadsheet(formula, bulk + "/template", "curl -s '" + bulk + "/template' -o cases.csv\n"
                + "curl -s '" + bulk + "' -H 'Content-Type: text/csv' --data-binary @cases.csv -o answers.csv");
    }
}
