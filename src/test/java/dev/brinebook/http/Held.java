// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Calculations that begin and then wait until a test lets them end. */
public final class Held {

    private final CountDownLatch begun;
    private final CountDownLatch mayEnd = new CountDownLatch(1);

    public Held(int calculations) {
        this.begun = new CountDownLatch(calculations);
    }

    /** The calculation of a trial operation. */
    public Trial.Answer hold(Trial.Request request) {
        begun.countDown();
        try {
            assertTrue(mayEnd.await(30, TimeUnit.SECONDS));
        } catch (InterruptedException e) {
            throw new IllegalStateException("cut off", e);
        }
        return new Trial.Answer("finished");
    }

    public void awaitBegun() throws InterruptedException {
        assertTrue(begun.await(20, TimeUnit.SECONDS));
    }

    public void letEnd() {
        mayEnd.countDown();
    }
}
