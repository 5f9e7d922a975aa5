// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.OperatingSystemMXBean;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.http.server.InMemory;
import dev.brinebook.http.server.InMemory.Reply;
import dev.brinebook.request.softener.BedCapacityCache;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Sends the request that the bytes encode to the service and reports the outcome to the tally. */
final class Probe {

    /** Requests after the first, each with what the service found at fault in the one before put in order. */
    private static final int REPAIRS = 6;
    private static final int UNPROCESSABLE = 422;
    private static final Map<String, Code> CODES = Arrays.stream(Code.values())
            .collect(Collectors.toMap(WireNames::of, Function.identity()));
    private static final OperatingSystemMXBean PROCESS = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final InMemory service;
    private final Promises promises;
    private final Tally tally;
    private final ObjectMapper json = new ObjectMapper();

    Probe(InMemory service, Promises promises, Tally tally) {
        this.service = service;
        this.promises = promises;
        this.tally = tally;
    }

    void send(Operation<?, ?> operation, Way way, int options, byte[] bytes) {
        if (way == Way.RECORD) {
            record(operation, options, new RandomRequests(new BytesAsRandom(bytes)));
        } else {
            send(operation, way, way.call(operation, options, bytes));
        }
    }

    private void record(Operation<?, ?> operation, int options, RandomRequests random) {
        ObjectNode request = random.request(operation.requestType());
        for (int i = 0; i <= REPAIRS; i++) {
            Reply reply = send(operation, Way.RECORD, Call.post(operation.path(), Way.options(operation, options),
                    Operation.JSON, Way.utf8(request.toString())));
            if (reply.status() != UNPROCESSABLE) {
                return;
            }
            List<Violation> faults = faults(reply);
            if (faults.stream().allMatch(fault -> fault.code() == Code.IMPOSSIBLE)) {
                return;
            }
            random.repair(request, operation.requestType(), faults);
        }
    }

    private List<Violation> faults(Reply reply) {
        try {
            JsonNode errors = json.readTree(reply.body()).path("errors");
            return StreamSupport.stream(errors.spliterator(), false).map(error -> new Violation(error.path("pointer").asText(),
                    CODES.get(error.path("code").asText()), null)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Reply send(Operation<?, ?> operation, Way way, Call call) {
        long wall = System.nanoTime();
        long processor = PROCESS.getProcessCpuTime();
        Reply reply = service.ask(call.head(), call.body());
        long nanos = Math.min(System.nanoTime() - wall, PROCESS.getProcessCpuTime() - processor);
        if (nanos > tally.limitNanos()) {
            nanos = Math.min(nanos, again(call));
        }
        tally.add(operation, way, call, reply.status() == 200, nanos, promises.broken(operation, way, call, reply));
        return reply;
    }

    /** The time it takes when nothing is remembered, and nothing left to compile. */
    private long again(Call call) {
        BedCapacityCache.clear();
        WorkingMemory.clear();
        long wall = System.nanoTime();
        long processor = PROCESS.getProcessCpuTime();
        service.ask(call.head(), call.body());
        return Math.min(System.nanoTime() - wall, PROCESS.getProcessCpuTime() - processor);
    }
}
