// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

/** A message that cannot be answered as intended: reported as an error of JSON-RPC 2.0, section 5.1. */
final class RpcFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int code;

    RpcFault(int code, String message) {
        super(message, null, false, false);
        this.code = code;
    }

    int code() {
        return code;
    }
}
