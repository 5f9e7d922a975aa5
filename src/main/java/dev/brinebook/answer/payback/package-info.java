// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: flows of money, payback, and what a meter saves over a clock. */
package dev.brinebook.answer.payback;
