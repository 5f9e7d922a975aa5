// SPDX-License-Identifier: Apache-2.0
/**
 * Texts for people: messages, and the languages that have a text for each. A text has an id, and is kept in one file a
 * language under {@code /text}, in the message syntax of ICU.
 */
package dev.brinebook.text;
