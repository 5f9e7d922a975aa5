// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.load;

/**
 * A request to send by POST.
 *
 * @param path with its query
 * @param type media type of the body
 * @param body what is sent
 */
record Message(String path, String type, byte[] body) {

    static Message json(String path, byte[] body) {
        return new Message(path, "application/json", body);
    }
}
