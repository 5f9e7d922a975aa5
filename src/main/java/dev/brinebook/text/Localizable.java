// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

/** A constant of a closed list, or another thing of our own, that has a text in every language. */
public interface Localizable {

    /** Id of its text, such as {@code caution.hydrogenSulfide}. Ids stay when a constant is moved. */
    String textId();

    /** The id of a constant: {@code list}, a point and the name of the constant in camel case. */
    static String idOf(String list, Enum<?> constant) {
        String[] words = constant.name().toLowerCase(java.util.Locale.ROOT).split("_");
        StringBuilder id = new StringBuilder(list).append('.').append(words[0]);
        for (int word = 1; word < words.length; word++) {
            id.append(Character.toUpperCase(words[word].charAt(0))).append(words[word], 1, words[word].length());
        }
        return id.toString();
    }
}
