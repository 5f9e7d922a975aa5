// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** A JSON object within a request that another property gives the meaning of, as it was sent; it is read later. */
public final class JsonObject {

    private final String text;

    /** The object that is written so; {@code text} is JSON without duplicate names. */
    public JsonObject(String text) {
        this.text = Objects.requireNonNull(text, "text");
    }

    /** The object as a body of its own. */
    public byte[] bytes() {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonObject object && text.equals(object.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
