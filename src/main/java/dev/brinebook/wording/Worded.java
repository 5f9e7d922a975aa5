package dev.brinebook.wording;

/** Something that is said to people in words of its own, such as a constant of a closed list. */
public interface Worded {

    /** What is said, in English, with any unit as people in the United States use it. */
    String words();

    /** The same for people who measure in metric units. */
    default String metricWords() {
        return words();
    }
}
