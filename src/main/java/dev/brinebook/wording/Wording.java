package dev.brinebook.wording;

import java.math.BigDecimal;

/** How a language writes what a {@link Message} says. */
public interface Wording {

    /** As the messages stand in the code. */
    Wording ENGLISH = new Wording() {
        @Override
        public String template(String english) {
            return english;
        }

        @Override
        public String number(BigDecimal number) {
            return number.toPlainString();
        }

        @Override
        public boolean isOne(BigDecimal count) {
            return count.compareTo(BigDecimal.ONE) == 0;
        }
    };

    /** Language by ISO 639, such as {@code es}. */
    default String code() {
        return "en";
    }

    /** The template in this language. */
    String template(String english);

    /** The number in plain notation, without a sign between thousands. */
    String number(BigDecimal number);

    /** Whether so many of a thing are spoken of in the singular. */
    boolean isOne(BigDecimal count);
}
