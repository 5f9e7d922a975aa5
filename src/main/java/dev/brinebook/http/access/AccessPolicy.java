// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.access;

import dev.brinebook.agent.AgentServer;
import dev.brinebook.http.Settings;
import dev.brinebook.http.exchange.CachePolicy;
import dev.brinebook.http.exchange.Problems;
import dev.brinebook.http.limit.Rejection;
import dev.brinebook.http.limit.RequestMetrics;
import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Who may have something calculated, and how often: by key where keys are on (RFC 6750), else by address. Health, pages and
 * the contract are open to all.
 */
public final class AccessPolicy {

    public static final String CHALLENGE = "WWW-Authenticate";
    public static final String RATE = "RateLimit";
    public static final String RATE_POLICY = "RateLimit-Policy";

    private static final Logger LOG = LoggerFactory.getLogger(AccessPolicy.class);
    /** The caller, as metrics and the log may name it. */
    public static final String ATTRIBUTE = "caller";
    private static final Pattern BEARER = Pattern.compile("(?i:bearer) +([A-Za-z0-9._~+/-]{1,512}=*)");
    private static final String REALM = "Bearer realm=\"Brinebook\"";

    /** Attribute of a request: the caller whose share of the service it uses. */
    private static final String IDENTITY = AccessPolicy.class.getName();
    /** Attribute of a request with a right key: the name of that key. */
    private static final String KEY_NAME = IDENTITY + ".key";

    private final ApiKeys keys;
    private final RateLimit rate;
    private final KeyGuesses guesses = new KeyGuesses();
    private final RequestMetrics metrics;

    /**
     * Callers as the settings have them.
     *
     * @throws IllegalArgumentException when the file of keys cannot be used
     */
    public AccessPolicy(Settings settings, RequestMetrics metrics) {
        this.keys = settings.apiKeysFile().isEmpty() ? null : new ApiKeys(Path.of(settings.apiKeysFile()));
        this.rate = settings.ratePerMinute() == 0 ? null : new RateLimit(settings.ratePerMinute());
        this.metrics = metrics;
        LOG.info("API keys {}, requests per minute and caller {}", keys == null ? "off" : "on, " + keys.count(),
                rate == null ? "not limited" : settings.ratePerMinute());
    }

    /**
     * Finds the caller whose share of the service a request uses: that of its key, if keys are on and it is correct, else of its address.
     * A key is checked once, and not at all if too many wrong ones came from its address.
     *
     * @return seconds to wait before a key from this address is looked at again, or 0
     */
    public long identify(Request request) {
        String address = Request.getRemoteAddr(request);
        request.setAttribute(IDENTITY, "address " + address);
        String given = request.getHeaders().get(HttpHeader.AUTHORIZATION);
        if (keys == null || given == null || !concerns(request.getHttpURI().getCanonicalPath())) {
            return 0;
        }
        long wait = guesses.waitSeconds(address);
        if (wait > 0) {
            return wait;
        }
        Matcher bearer = BEARER.matcher(given);
        String name = bearer.matches() ? keys.nameOf(bearer.group(1)).orElse(null) : null;
        if (name == null) {
            return guesses.wrong(address);
        }
        guesses.right(address);
        request.setAttribute(KEY_NAME, name);
        request.setAttribute(IDENTITY, "key " + name);
        return 0;
    }

    /** What {@link #identify} found. */
    public static String identityOf(Request request) {
        return (String) request.getAttribute(IDENTITY);
    }

    public static String identityOf(Context context) {
        return (String) context.req().getAttribute(IDENTITY);
    }

    /** Whether a path is for known callers only, where keys are on. */
    static boolean concerns(String path) {
        return path != null && (path.startsWith("/v1/") || path.equals(AgentServer.PATH));
    }

    /**
     * Lets a request go on.
     *
     * @throws ProblemException when its caller has no key, or asks too often
     */
    public void admit(Context context) {
        // A browser asks what it may send before it sends a key.
        if (!concerns(context.path()) || context.req().getMethod().equals("OPTIONS")) {
            return;
        }
        if (keys != null) {
            CachePolicy.keepPrivate(context);
            admitKey(context);
        }
        if (rate != null) {
            RateLimit.Standing standing = rate.ask(identityOf(context));
            context.header(RATE_POLICY, rate.policy()).header(RATE, standing.field());
            if (!standing.taken()) {
                throw tooMany(context, standing.waitSeconds());
            }
        }
    }

    private ProblemException tooMany(Context context, long waitSeconds) {
        metrics.reject(Rejection.RATE);
        context.header(Problems.RETRY_AFTER, Long.toString(waitSeconds));
        return new ProblemException(ProblemType.TOO_MANY_REQUESTS, ProblemType.TOO_MANY_REQUESTS.explanation());
    }

    private void admitKey(Context context) {
        String name = (String) context.req().getAttribute(KEY_NAME);
        if (name == null) {
            metrics.reject(Rejection.KEY);
            context.header(CHALLENGE, context.header("Authorization") == null ? REALM : REALM + ", error=\"invalid_token\"");
            throw new ProblemException(ProblemType.UNAUTHORIZED, ProblemType.UNAUTHORIZED.explanation());
        }
        context.attribute(ATTRIBUTE, metrics.countCaller(name));
    }
}
