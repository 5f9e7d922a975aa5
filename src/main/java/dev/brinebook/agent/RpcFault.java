// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import java.util.Map;

/** A message that cannot be answered as intended: reported as an error of JSON-RPC 2.0, section 5.1. */
final class RpcFault extends RuntimeException {

    static final int PARSE_ERROR = -32_700;
    static final int INVALID_REQUEST = -32_600;
    static final int METHOD_NOT_FOUND = -32_601;
    static final int INVALID_PARAMS = -32_602;
    /** Of revisions before 2026-07-28. */
    static final int RESOURCE_NOT_FOUND = -32_002;
    /** Of revision 2026-07-28, as the next. */
    static final int HEADER_MISMATCH = -32_020;
    static final int UNSUPPORTED_VERSION = -32_022;

    private static final long serialVersionUID = 1L;

    private final int code;
    private final int status;
    private final transient Map<String, Object> data;

    /** An error that is answered with the HTTP {@code status}; {@code data} may be empty. */
    RpcFault(int code, int status, String message, Map<String, Object> data) {
        super(message, null, false, false);
        this.code = code;
        this.status = status;
        this.data = data;
    }

    /** A message that is none, or asks for what there is not. */
    static RpcFault badRequest(int code, String message) {
        return new RpcFault(code, 400, message, Map.of());
    }

    static RpcFault invalidParams(String message) {
        return new RpcFault(INVALID_PARAMS, 200, message, Map.of());
    }

    int status() {
        return status;
    }

    /** The error as it is written. */
    Map<String, Object> error() {
        Map<String, Object> error = Json.object("code", code, "message", getMessage());
        if (!data.isEmpty()) {
            error.put("data", data);
        }
        return error;
    }
}
