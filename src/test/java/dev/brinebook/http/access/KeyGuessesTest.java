// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Wrong keys of an address, as many as a minute allows (OWASP, Authentication Cheat Sheet). */
class KeyGuessesTest {

    private final KeyGuesses guesses = new KeyGuesses();

    /** One more may be sent each second, so that on a slow machine they are some more than a minute's. */
    private void sendTooMany(String address) {
        int sent = 1;
        while (guesses.wrong(address) == 0) {
            sent++;
        }
        assertTrue(sent > KeyGuesses.WRONG_PER_MINUTE, sent + " sent");
    }

    @Test
    void looksAtNoMoreKeysForAWhile() {
        assertEquals(0, guesses.waitSeconds("one"));
        sendTooMany("one");
        assertTrue(guesses.waitSeconds("one") > 0);
        assertEquals(0, guesses.waitSeconds("other"));
    }

    /** Behind a proxy all callers have its address: who sends wrong keys does not shut out those who send right ones. */
    @Test
    void goesOnLookingAtKeysOfAnAddressThatSentARightOne() {
        guesses.right("one");
        sendTooMany("one");
        assertEquals(0, guesses.waitSeconds("one"));
    }
}
