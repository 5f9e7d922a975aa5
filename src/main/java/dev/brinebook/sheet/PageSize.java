// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

/** A size of paper. */
public enum PageSize {
    /** 8.5 by 11 inches. */
    LETTER("letter"),
    /** 210 by 297 mm. */
    A4("a4");

    private final String name;

    PageSize(String name) {
        this.name = name;
    }

    /** The rule that makes pages of this size, for printers and for the typesetter. */
    String style() {
        return "@page { size: " + name + "; }\n";
    }
}
