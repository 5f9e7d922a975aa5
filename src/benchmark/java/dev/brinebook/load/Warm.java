// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Has a service answer everything that it can, in each way, so that no one operation is all that it was compiled for. */
final class Warm {

    private static final int CONNECTIONS = 4;
    private static final double LEAST_ANSWERED = 0.5;
    private static final int LINES = 200;
    private static final double MOST_SECONDS = 60;

    private final Requests requests;
    private final Drive drive;
    private final Effort effort;

    Warm(Requests requests, Drive drive, Effort effort) {
        this.requests = requests;
        this.drive = drive;
        this.effort = effort;
    }

    /** Every example and every operation with other waters and households, as lists and by agents too; the peers some of it. */
    void answerEverything(ServerProcess service, List<ServerProcess> peers) throws IOException {
        double before = service.processorSeconds();
        int answered = 0;
        int sent = 0;
        for (String operation : requests.operations()) {
            List<Message> messages = new ArrayList<>(requests.examples(operation));
            if (messages.isEmpty()) {
                continue;
            }
            int examples = drive.warm(service, messages, 1, MOST_SECONDS);
            if (examples < messages.size()) {
                throw new IOException("not every example of " + operation + " is answered");
            }
            messages.addAll(requests.various(operation, effort.warmRequests(), operation.hashCode()));
            int now = drive.warm(service, messages, CONNECTIONS, effort.warmSeconds());
            answered += now;
            sent++;
            if (now < LEAST_ANSWERED * Math.min(messages.size(), 2 * requests.examples(operation).size())) {
                throw new IOException("too few of " + operation + " are answered: " + now);
            }
            for (ServerProcess peer : peers) {
                drive.warm(peer, messages, CONNECTIONS, effort.warmSeconds() / 4);
            }
        }
        for (Message message : List.of(Bulk.ndjson(requests, LINES, 1), Bulk.csv(LINES, 1), Bulk.agent(requests, 1, 1).get(0))) {
            drive.closed(service, Collections.nCopies(20, message), 2);
        }
        System.out.printf("warm: %,d answers of %d operations by %.1f s of processor time%n", answered, sent,
                service.processorSeconds() - before);
    }
}
