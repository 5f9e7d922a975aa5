// SPDX-License-Identifier: Apache-2.0
/** What the packaged service costs under load, beside plain servers: started by {@code src/benchmark/load}. */
package dev.brinebook.load;
