// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import java.util.List;

/** All texts for language models other than the descriptions of the operations. */
public final class Guide {

    /** Sent to every agent that connects. */
    static final String INSTRUCTIONS = """
            Brinebook calculates household water softeners: hardness, sizing, settings, regeneration, salt, water, money.
            Call a tool instead of estimating these numbers, and quote numbers with their units, unchanged.

            Choosing: `assess` gives the complete assessment of a case. Every other tool answers one question and needs less.
            Units: a quantity is an object such as {"value": 18.5, "unit": "gpg"}. Send values in the unit that the
            person used. Never convert yourself. `units` ("us" or "metric") chooses the units of the answer. A quantity of an
            answer can be sent back in a request.
            Meter readings: `readMeter` converts them to `forecast`. Send it as `household` to every other tool.
            Missing data: ask the person (water test, people, existing softener and its settings) rather than guess.
            Omitted values get documented defaults, listed in `assumptions`. Show the person the defaults that matter.
            Answers: quote `summary` unchanged. Always show the person every entry of `cautions`. `basis` has the formula and
            source of each number. Use it to explain.
            Errors: the result is a problem document. `errors` lists all errors at once, each with a JSON pointer into
            your arguments and the allowed values. Correct them all and call again. If you need a fact, ask the person.
            No call changes anything. The same arguments always give the same answer. Dates and `seed` are explicit.
            All households, products and prices in the examples are invented. Never present one as real.
            Local codes and licensed practice take precedence over these figures.
            """;

    private Guide() {
    }

    /** The page at {@code /llms.txt}, in the form that llmstxt.org proposes. */
    public static String llmsText(List<Operation<?, ?>> operations) {
        StringBuilder text = new StringBuilder("""
                # Brinebook

                > The calculator for household water softeners, over HTTP: from a water test, a household and the
                > existing softener it calculates the compensated hardness, whether the softener is large enough, the settings,
                > the use of salt and water and its cost, whether a metered controller pays, and the cautions to show.

                - Call an operation by POST with a JSON object (`Content-Type: application/json`). No key, no session. Every call
                  is safe to repeat, and the same request always gives the same answer.
                - A quantity is an object such as `{"value": 18.5, "unit": "gpg"}`, in a request and in an answer, which can be
                  sent back. `units` ("us" or "metric") chooses the units of the answer.
                - Omitted values get documented defaults. Every answer has `summary` (a sentence to quote), `cautions` (show them
                  all) and `modelVersion`; with `?detail=full` also `assumptions` (every value used, given or a default) and `basis`
                  (formula and source of each number). `?detail=numbers` leaves out texts, `?fields=settings.reserve` all else.
                - To explain a number: POST `/v1/explanation/{operation}?pointer=/settings/reserve` with the request of the operation.
                - Errors are problem documents (RFC 9457). `errors` lists all errors at once, each with a JSON pointer, a message
                  and the allowed values. Correct them all before sending again.
                - Readings of a water meter: `readMeter` returns a `forecast` to send as `household` to every other operation.
                - Ask for missing data rather than guess it. All households, products and prices in the examples are invented.
                - Local codes and licensed practice take precedence over these figures.

                ## Agents

                - [Model Context Protocol](/mcp): the same operations as tools, streamable HTTP without sessions, each tool with the
                  name of its operation. Arguments are the request, structured content is the answer.

                ## Operations

                """);
        for (Operation<?, ?> operation : operations) {
            text.append("- [%1$s](/docs/operations/%1$s): POST `%2$s`. %3$s. [In the contract](/openapi.json#/paths/%4$s/post)"
                    .formatted(operation.id(), operation.path(), operation.summary(), operation.path().replace("/", "~1")))
                    .append('\n');
        }
        return text.append("""

                ## Many cases

                - [Bulk](/openapi.json#/paths/~1v1~1bulk~1{calculator}/post): POST `/v1/bulk/{operation}`, one request per line
                  (`application/x-ndjson`), one answer per line, in the same order, while the list is still being sent; or a table
                  (`text/csv`) with the columns of `/v1/bulk/{operation}/template`.

                ## Contract

                - [OpenAPI 3.1 as JSON](/openapi.json): every schema, limit, default and example
                - [OpenAPI 3.1 as YAML](/openapi.yaml): the same
                - [Documentation](/docs): the contract, to read and to try

                ## Optional

                - [Version](/version): of the service and of its formulas and data
                - [Readiness](/health/ready): whether to send requests
                """).toString();
    }
}
