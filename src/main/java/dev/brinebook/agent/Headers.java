// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * What the head of a request repeats of its body, each null when it is not there: revision 2026-07-28, "Request Metadata".
 *
 * @param version {@code MCP-Protocol-Version}
 * @param method {@code Mcp-Method}
 * @param name {@code Mcp-Name}
 */
public record Headers(String version, String method, String name) {

    public static final String VERSION = "MCP-Protocol-Version";
    public static final String METHOD = "Mcp-Method";
    public static final String NAME = "Mcp-Name";

    private static final String BASE64 = "=?base64?";

    /** The name, decoded where it is encoded ("Value Encoding"); null where that is not possible. */
    String plainName() {
        if (name == null || !name.startsWith(BASE64) || !name.endsWith("?=")) {
            return name;
        }
        try {
            return new String(Base64.getDecoder().decode(name.substring(BASE64.length(), name.length() - 2)), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return null;
        }
    }
}
