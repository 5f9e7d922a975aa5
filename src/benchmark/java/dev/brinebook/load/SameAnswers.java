// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Makes sure, before anything is measured, that the peers that calculate answer what the service answers, byte for byte. */
final class SameAnswers {

    private static final int ASKED = 500;

    private final Requests requests;
    private final String key;

    SameAnswers(Requests requests, String key) {
        this.requests = requests;
        this.key = key;
    }

    void check(ServerProcess service, List<ServerProcess> peers) throws IOException {
        for (Rows.Row row : Rows.all(requests)) {
            if (row.same()) {
                for (ServerProcess peer : peers) {
                    check(row.load().draw(ASKED, 99), service, peer);
                }
            }
        }
    }

    private void check(List<Message> messages, ServerProcess service, ServerProcess peer) throws IOException {
        try (Connection own = new Connection(service.port(), key); Connection other = new Connection(peer.port(), key)) {
            for (Message message : messages) {
                String expected = own.answer(message);
                String answered = other.answer(message);
                if (!expected.equals(answered)) {
                    throw new IOException(peer.name() + " answers otherwise: " + new String(message.body(), StandardCharsets.UTF_8)
                            + "\n" + expected + "\n" + answered);
                }
            }
            Message wrong = Message.json(messages.get(0).path(), Requests.bytes(new String(messages.get(0).body(), StandardCharsets.UTF_8)
                    .replaceFirst("\"value\":[\\d.]+", "\"value\":-1")));
            if (own.status(wrong) != 422 || other.status(wrong) != 422) {
                throw new IOException(peer.name() + " or the service takes a hardness below none");
            }
        }
    }
}
