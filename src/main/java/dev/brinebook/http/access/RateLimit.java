// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * A limit of requests per minute for each caller: a token bucket with the capacity of one minute. It reports the state of a caller in the
 * fields of draft-ietf-httpapi-ratelimit-headers-10.
 */
final class RateLimit {

    /** Callers remembered; of more, those who have not asked for longest start afresh. */
    private static final int MOST_CALLERS = 10_000;
    private static final Duration WINDOW = Duration.ofMinutes(1);

    private final int perMinute;
    private final Cache<String, Bucket> buckets = Caffeine.newBuilder().executor(Runnable::run).maximumSize(MOST_CALLERS)
            .expireAfterAccess(WINDOW.multipliedBy(2)).build();

    /**
     * The state of a caller.
     *
     * @param taken whether this request may go on
     * @param remaining requests left now
     * @param waitSeconds seconds until the next may go on, when this one may not; else until all are there again
     */
    record Standing(boolean taken, long remaining, long waitSeconds) {

        /** The value of the field RateLimit. */
        String field() {
            return "\"minute\";r=" + remaining + ";t=" + waitSeconds;
        }
    }

    RateLimit(int perMinute) {
        this.perMinute = perMinute;
    }

    /** The value of the field RateLimit-Policy. */
    String policy() {
        return "\"minute\";q=" + perMinute + ";w=" + WINDOW.toSeconds();
    }

    /** Seconds until the next request of a caller may go on, or 0; asks without taking. */
    long waitSeconds(String caller) {
        Bucket bucket = buckets.getIfPresent(caller);
        return bucket == null ? 0 : wholeSeconds(bucket.estimateAbilityToConsume(1).getNanosToWaitForRefill());
    }

    Standing ask(String caller) {
        ConsumptionProbe probe = buckets.get(caller, name -> bucket()).tryConsumeAndReturnRemaining(1);
        long nanos = probe.isConsumed() ? probe.getNanosToWaitForReset() : probe.getNanosToWaitForRefill();
        return new Standing(probe.isConsumed(), probe.getRemainingTokens(), wholeSeconds(nanos));
    }

    private static long wholeSeconds(long nanos) {
        long second = TimeUnit.SECONDS.toNanos(1);
        return (nanos + second - 1) / second;
    }

    /** Counts the time that passed: a clock that is set ahead gives nothing, one that is set back shuts nobody out. */
    private Bucket bucket() {
        return Bucket.builder().addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, WINDOW))
                .withNanosecondPrecision().build();
    }
}
