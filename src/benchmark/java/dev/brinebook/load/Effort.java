// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

/**
 * How much is measured.
 *
 * @param rounds how often the servers take turns
 * @param processorSeconds processor time of a server in a turn, about
 * @param warmRequests requests of each operation that are answered before anything is measured
 * @param warmSeconds most time for those of one operation
 * @param rowSeconds processor time, at most, by which a server is made warm with the requests of a row
 * @param latencySeconds how long a server is at half load
 * @param mixed requests after which memory is looked at
 */
record Effort(int rounds, double processorSeconds, int warmRequests, double warmSeconds, double rowSeconds, double latencySeconds,
        int mixed) {

    static final Effort FULL = new Effort(5, 1, 4_000, 4, 60, 5, 100_000);
    static final Effort QUICK = new Effort(3, 0.3, 1_000, 1, 20, 2, 20_000);
}
