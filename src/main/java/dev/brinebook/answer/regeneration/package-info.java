/** Parts of answers: what a schedule takes in a year, its hard days, and the salt to buy. */
package dev.brinebook.answer.regeneration;
