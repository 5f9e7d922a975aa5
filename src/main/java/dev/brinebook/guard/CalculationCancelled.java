// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

/** Ends a calculation whose caller no longer waits for the result; see {@link CancellationToken}. */
public final class CalculationCancelled extends RuntimeException {

    private static final long serialVersionUID = 1L;

    CalculationCancelled() {
        super("stopped by whoever asked for it", null, false, false);
    }
}
