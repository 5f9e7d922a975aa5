package dev.brinebook.http.server;

import dev.brinebook.api.Language;
import dev.brinebook.api.Operation;
import dev.brinebook.http.access.Callers;
import dev.brinebook.http.exchange.AnswerLanguage;
import dev.brinebook.http.exchange.RequestId;
import dev.brinebook.http.exchange.TraceParent;
import dev.brinebook.http.limit.RequestLabel;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Answers the plainest request, a small JSON body, to be answered in JSON, without the servlet layers,
 * which take longer than most calculations. All else goes on to them, and so does every fault that a calculation ended in: only
 * they tell it. {@code ShortWayTest} holds both ways to the same answer.
 */
final class ShortWay extends Handler.Wrapper {

    /** Attribute of a request under which the layers below find the fault that its calculation ended in. */
    static final String FAULT = ShortWay.class.getName();

    private static final int MOST_BYTES = 16_384;
    private static final HttpField JSON = new PreEncodedHttpField(HttpHeader.CONTENT_TYPE, Operation.JSON);
    private static final HttpField NOT_STORED = new PreEncodedHttpField(HttpHeader.CACHE_CONTROL, "no-store");

    private final Map<String, OperationHandler<?, ?>> operations;
    private final Predicate<Request> open;
    private final Cors cors;
    private final RequestLog log;

    /** Takes to one of {@code operations}, by its path, what {@code open} lets in without asking who sends it. */
    ShortWay(Map<String, OperationHandler<?, ?>> operations, Predicate<Request> open, Cors cors, RequestLog log) {
        this.operations = operations;
        this.open = open;
        this.cors = cors;
        this.log = log;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        String path = request.getHttpURI().getCanonicalPath();
        OperationHandler<?, ?> operation = path == null ? null : operations.get(path);
        if (operation == null || !isPlain(request) || !open.test(request)
                || !(request.getAttribute(BodyHandler.ATTRIBUTE) instanceof byte[] body)) {
            return super.handle(request, response, callback);
        }
        Language language = Language.of(request.getHeaders().get(AnswerLanguage.ACCEPT));
        byte[] answer;
        try {
            answer = operation.answer(Callers.identityOf(request), body, language);
        } catch (RuntimeException fault) {
            request.setAttribute(FAULT, fault);
            return super.handle(request, response, callback);
        }
        String id = RequestId.accepted(request.getHeaders().get(RequestId.HEADER));
        HttpFields.Mutable headers = response.getHeaders();
        StandingHeaders.put(headers);
        headers.put(RequestId.HEADER, id);
        cors.allow(request.getHeaders(), headers);
        headers.put(JSON).put(NOT_STORED).put(AnswerLanguage.HEADER, language.code());
        operation.varying().forEach(field -> headers.add(HttpHeader.VARY, field));
        headers.put(HttpHeader.CONTENT_LENGTH, answer.length);
        response.setStatus(200);
        response.write(true, ByteBuffer.wrap(answer), callback);
        log.tell(new RequestLabel(path, "POST", 200), id, TraceParent.idOf(request.getHeaders().get(TraceParent.HEADER)), null,
                System.nanoTime() - request.getBeginNanoTime());
        return true;
    }

    /** Whether nothing in the request has to be looked at but its language, its id and its small body. */
    private static boolean isPlain(Request request) {
        if (!HttpMethod.POST.is(request.getMethod()) || request.getHttpURI().getQuery() != null
                || request.getLength() < 0 || request.getLength() > MOST_BYTES) {
            return false;
        }
        boolean json = false;
        boolean accepted = true;
        for (HttpField field : request.getHeaders()) {
            String value = field.getValue();
            HttpHeader header = field.getHeader();
            if (header == null) {
                continue;
            }
            switch (header) {
                case CONTENT_TYPE -> json = Operation.JSON.equals(value);
                case ACCEPT -> accepted = value.equals("*/*") || value.equals(Operation.JSON);
                case ACCEPT_ENCODING, CONTENT_ENCODING, TRANSFER_ENCODING, EXPECT, AUTHORIZATION, UPGRADE -> {
                    return false;
                }
                default -> {
                    // says nothing about the body or the answer
                }
            }
        }
        return json && accepted;
    }
}
