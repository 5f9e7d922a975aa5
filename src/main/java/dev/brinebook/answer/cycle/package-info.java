// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: the steps of a regeneration, and the refill that makes its brine. */
package dev.brinebook.answer.cycle;
