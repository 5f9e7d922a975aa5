package dev.brinebook.sheet;

/** A size of paper. */
public enum Paper {
    /** 8.5 by 11 inches. */
    LETTER("letter"),
    /** 210 by 297 mm. */
    A4("a4");

    private final String name;

    Paper(String name) {
        this.name = name;
    }

    /** The rule that makes pages of this size, for printers and for the typesetter. */
    String style() {
        return "@page { size: " + name + "; }\n";
    }
}
