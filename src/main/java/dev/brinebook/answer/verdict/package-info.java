/** Parts of answers: the steps from the least to the most, each with its own worth, in numbers and in words. */
package dev.brinebook.answer.verdict;
