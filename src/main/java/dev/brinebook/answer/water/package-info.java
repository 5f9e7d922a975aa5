// SPDX-License-Identifier: Apache-2.0
/** Parts of answers: hardness line by line, its classes, and the softened water. */
package dev.brinebook.answer.water;
