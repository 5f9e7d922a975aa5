// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * Bounds how many wrong keys an address may send, so that nobody can guess keys. Beyond that its keys are not looked at.
 * From an address that sent a right key lately, such as a proxy that many share, right keys are still taken: one caller behind
 * it does not shut out the others.
 */
final class KeyGuesses {

    static final int WRONG_PER_MINUTE = 60;
    private static final int MAX_ADDRESSES = 10_000;
    private static final Duration REMEMBERED = Duration.ofMinutes(10);
    /** To note it takes longer than to look whether it is noted. */
    private static final long NOTED_AGAIN_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final RateLimit wrong = new RateLimit(WRONG_PER_MINUTE);
    private final Cache<String, Long> known = Caffeine.newBuilder().executor(Runnable::run).maximumSize(MAX_ADDRESSES)
            .expireAfterWrite(REMEMBERED).build();

    /** Seconds that an address must wait before its key is looked at, or 0. */
    long waitSeconds(String address) {
        return known.getIfPresent(address) != null ? 0 : wrong.waitSeconds(address);
    }

    void right(String address) {
        long now = System.nanoTime();
        Long noted = known.getIfPresent(address);
        if (noted == null || now - noted > NOTED_AGAIN_NANOS) {
            known.put(address, now);
        }
    }

    /** Counts a wrong key, and gives the seconds to wait when there were too many, or 0. */
    long wrong(String address) {
        RateLimit.Standing standing = wrong.ask(address);
        return standing.taken() ? 0 : standing.waitSeconds();
    }
}
