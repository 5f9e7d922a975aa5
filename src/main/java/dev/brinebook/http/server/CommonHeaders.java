// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import java.util.List;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.PreEncodedHttpField;

/** What every answer says of itself. */
final class CommonHeaders {

    static final List<HttpField> FIELDS = List.of(new PreEncodedHttpField("X-Content-Type-Options", "nosniff"),
            new PreEncodedHttpField("Referrer-Policy", "no-referrer"),
            new PreEncodedHttpField("Link", "</openapi.yaml>; rel=\"service-desc\", </docs>; rel=\"service-doc\""));

    private CommonHeaders() {
    }

    static void put(HttpFields.Mutable headers) {
        for (HttpField field : FIELDS) {
            headers.put(field);
        }
    }
}
