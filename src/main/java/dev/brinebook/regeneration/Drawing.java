// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/**
 * Number of years to simulate where there is no closed form.
 *
 * @param years of a reserve that follows the last weeks
 * @param yearsByDay under an override that often acts, where years hardly differ
 */
record Drawing(int years, int yearsByDay) {

    static final Drawing OF_ONE_LEVEL = new Drawing(400, 40);
    /** Of each of seven levels. */
    static final Drawing OF_SEVERAL_LEVELS = new Drawing(60, 8);
}
