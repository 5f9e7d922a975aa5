// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: where a capacity comes from, and how much of the salt does work. */
package dev.brinebook.answer.resin;
