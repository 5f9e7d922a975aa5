// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import dev.brinebook.load.Drive.Cost;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** How long answers take, by the clock, at half of the most that the service answered a moment ago: the same rate for every server. */
final class Latency {

    private static final int CONNECTIONS = 32;
    private static final int PEAK_REQUESTS = 8_000;

    private final Requests requests;
    private final Drive drive;
    private final Effort effort;

    Latency(Requests requests, Drive drive, Effort effort) {
        this.requests = requests;
        this.drive = drive;
        this.effort = effort;
    }

    /** Prints a row for each server. The first is the service. */
    void measure(List<ServerProcess> servers) throws IOException {
        Table.heading("Compensated hardness at half of the service's peak, by the clock", "server", "requests/s", "p50 ms", "p99 ms",
                "p99/p50", "p99 of the service to this");
        List<Message> some = requests.drawn(Bulk.OPERATION, "well-family", PEAK_REQUESTS, 7, Bulk::water);
        drive.closed(servers.get(0), some, Comparison.CONNECTIONS);
        double rate = drive.closed(servers.get(0), some, Comparison.CONNECTIONS).perSecond() / 2;
        List<Message> all = requests.drawn(Bulk.OPERATION, "well-family", (int) (rate * effort.latencySeconds()), 8, Bulk::water);
        List<double[]> p50 = new ArrayList<>();
        List<double[]> p99 = new ArrayList<>();
        servers.forEach(server -> {
            p50.add(new double[effort.rounds()]);
            p99.add(new double[effort.rounds()]);
        });
        for (int round = 0; round < effort.rounds(); round++) {
            for (int i = 0; i < servers.size(); i++) {
                Cost cost = drive.open(servers.get(i), all, CONNECTIONS, rate);
                p50.get(i)[round] = cost.quantile(0.5);
                p99.get(i)[round] = cost.quantile(0.99);
            }
        }
        for (int i = 0; i < servers.size(); i++) {
            double middle = Table.median(p50.get(i));
            double late = Table.median(p99.get(i));
            Table.row(List.of(servers.get(i).name(), Table.number(rate), Table.number(middle), Table.number(late),
                    Table.number(late / middle), Table.number(Table.ratio(p99.get(0), p99.get(i)))));
        }
    }
}
