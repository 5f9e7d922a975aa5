// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

/**
 * Who sent a message, as far as it changes what is answered.
 *
 * @param revision the revision of the protocol that it speaks
 * @param takesForms whether it can put a form to its person
 * @param calculation calculates for it
 */
record Caller(Revision revision, boolean takesForms, Calculation calculation) {
}
