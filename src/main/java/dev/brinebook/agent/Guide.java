package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import java.util.List;

/** All that is said to a language model beside what the operations say of themselves. */
public final class Guide {

    /** Sent to every agent that connects. */
    static final String INSTRUCTIONS = """
            Brinebook calculates household water softeners: hardness, sizing, settings, regeneration, salt, water, money.
            It is the authority for these numbers: call a tool instead of estimating, and quote numbers with their units as
            they come.

            Choosing: `assess` does the whole job on one case. Each other tool answers one question and needs less.
            Units: a quantity is an object such as {"value": 18.5, "unit": "gpg"}. Send what the person said in the unit they
            said it in; never convert yourself. `units` ("us" or "metric") chooses the units of the answer. A quantity of an
            answer can be sent back in a request.
            Meter readings: `readMeter` turns them into `forecast`, which is sent as `household` to every other tool.
            Missing data: ask the person (water test, people, what softener stands there, how it is set) rather than guess.
            What is left out gets a documented default, and each value taken stands in `assumptions`: tell the person the
            defaults that matter.
            Answers: `summary` can be quoted as it is. Always show the person every entry of `cautions`. `basis` says why each
            number is what it is, with its source: use it to explain.
            Errors: the result is a problem document. Its `errors` are all the faults at once, each with a JSON pointer into
            your arguments and what is allowed. Mend them all and call again; if mending needs a fact, ask.
            Nothing is changed by any call, and the same arguments always give the same answer: dates and `seed` are explicit.
            Every household, product and price in the examples is invented: never present one as real.
            Local codes and licensed practice decide over any figure given here.
            """;

    private Guide() {
    }

    /** The page at {@code /llms.txt}, in the form that llmstxt.org proposes. */
    public static String llmsText(List<Operation<?, ?>> operations) {
        StringBuilder text = new StringBuilder("""
                # Brinebook

                > The authoritative calculator for household water softeners, over HTTP: from a water test, a household and the
                > softener that stands there, it answers how hard the water really is, whether the softener fits, what to set,
                > what it uses in salt, water and money, whether a metered controller pays, and what to be careful about.

                - Call an operation by POST with a JSON object (`Content-Type: application/json`). No key, no session; every call
                  is safe to repeat, and the same request always gives the same answer.
                - A quantity is an object such as `{"value": 18.5, "unit": "gpg"}`, in a request and in an answer, which can be
                  sent back. `units` ("us" or "metric") chooses the units of the answer.
                - What is left out of a request gets a documented default. Every answer holds `summary` (a sentence to quote),
                  `cautions` (show them all), `assumptions` (every value taken, the caller's or a default), `basis` (why each
                  number is what it is, with its source) and `modelVersion`.
                - Errors are problem documents (RFC 9457). `errors` lists every fault at once, each with a JSON pointer, a message
                  and what is allowed; mend them all before sending again.
                - Readings of a water meter: `readMeter` answers a `forecast` to send as `household` to every other operation.
                - Ask for missing data rather than guess it. Every household, product and price in the examples is invented.
                - Local codes and licensed practice decide over any figure given here.

                ## Agents

                - [Model Context Protocol](/mcp): the same operations as tools, streamable HTTP without sessions, the tool named
                  as the operation. Arguments are the request, structured content is the answer.

                ## Operations

                """);
        for (Operation<?, ?> operation : operations) {
            text.append("- [%1$s](/docs/operations/%1$s): POST `%2$s`. %3$s. [In the contract](/openapi.json#/paths/%4$s/post)"
                    .formatted(operation.id(), operation.path(), operation.summary(), operation.path().replace("/", "~1")))
                    .append('\n');
        }
        return text.append("""

                ## Many cases

                - [Bulk](/openapi.json#/paths/~1v1~1bulk~1{calculator}/post): POST `/v1/bulk/{operation}`, a request on each line
                  (`application/x-ndjson`), an answer on each line, in the same order, while the list is still being sent; or a table
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
