/** Parts of answers: where a capacity comes from, and how much of the salt does work. */
package dev.brinebook.answer.resin;
