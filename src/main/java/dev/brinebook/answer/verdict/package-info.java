// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: the steps from the smallest to the largest change, each with its own benefit, in numbers and in words. */
package dev.brinebook.answer.verdict;
