// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.calendar;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/** UUIDs that the same name always gets (RFC 9562, section 5.5, version 5). */
final class NameUuid {

    private NameUuid() {
    }

    static UUID of(UUID namespace, String name) {
        ByteBuffer digest = ByteBuffer.wrap(sha1(ByteBuffer.allocate(16).putLong(namespace.getMostSignificantBits())
                .putLong(namespace.getLeastSignificantBits()).array(), name.getBytes(StandardCharsets.UTF_8)));
        long most = digest.getLong() & 0xFFFF_FFFF_FFFF_0FFFL | 0x5000L;
        long least = digest.getLong() & 0x3FFF_FFFF_FFFF_FFFFL | 0x8000_0000_0000_0000L;
        return new UUID(most, least);
    }

    private static byte[] sha1(byte[] namespace, byte[] name) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(namespace);
            return digest.digest(name);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }
}
