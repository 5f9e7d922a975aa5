// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Everything that can be set, each by an environment variable.
 *
 * @param port port of the service; 0 for any free one
 * @param metricsPort port of /metrics and a second place for the health paths; 0 for any free one
 * @param host address to listen on
 * @param maxBodyBytes largest body accepted
 * @param stopSeconds time for running requests to finish after a stop
 * @param drainSeconds time between readiness off and closing the port
 * @param corsOrigins origins that browsers may call from
 * @param requestSeconds time limit for the headers and for the body of a request, each
 * @param maxConnections maximum number of connections to the port of the service
 * @param ratePerMinute requests a minute that each caller may send; 0 for any number
 * @param apiKeysFile file with the names and hashed keys of callers; empty to answer all
 * @param calculationMilliseconds time limit of a calculation, from its start
 * @param publicUrl scheme and authority that callers know the service by; empty where it is not known
 * @param securityContact where to report a weakness, as a URI; empty for nowhere
 * @param securityExpires until when that holds, or null
 */
public record Settings(int port, int metricsPort, String host, int maxBodyBytes, int stopSeconds, int drainSeconds,
        Set<String> corsOrigins, int requestSeconds, int maxConnections, int ratePerMinute,
        String apiKeysFile, int calculationMilliseconds, String publicUrl, String securityContact, OffsetDateTime securityExpires) {

    public static final int FEWEST_CONNECTIONS = 10;
    private static final Pattern ORIGIN = Pattern.compile("https?://[A-Za-z0-9.-]+(:\\d{1,5})?");

    /** RFC 9116, section 2.5.3: a web address is one of https. */
    private static final Pattern CONTACT = Pattern.compile("(mailto:[^@\\s]+@[^@\\s]+|https://[^/\\s]\\S*|tel:\\+?[0-9-]+)");

    /** Without a contact for weaknesses. */
    public Settings(int port, int metricsPort, String host, int maxBodyBytes, int stopSeconds, int drainSeconds,
            Set<String> corsOrigins, int requestSeconds, int maxConnections, int ratePerMinute,
            String apiKeysFile, int calculationMilliseconds, String publicUrl) {
        this(port, metricsPort, host, maxBodyBytes, stopSeconds, drainSeconds, corsOrigins, requestSeconds, maxConnections,
                ratePerMinute, apiKeysFile, calculationMilliseconds, publicUrl, "", null);
    }

    /** With everything that protects the service from its callers as it is by default. */
    public Settings(int port, int metricsPort, String host, int maxBodyBytes, int stopSeconds, int drainSeconds,
            Set<String> corsOrigins) {
        this(port, metricsPort, host, maxBodyBytes, stopSeconds, drainSeconds, corsOrigins, 10, 2_000, 0, "",
                10_000);
    }

    /** With no address of its own. */
    public Settings(int port, int metricsPort, String host, int maxBodyBytes, int stopSeconds, int drainSeconds, Set<String> corsOrigins,
            int requestSeconds, int maxConnections, int ratePerMinute, String apiKeysFile, int calculationMilliseconds) {
        this(port, metricsPort, host, maxBodyBytes, stopSeconds, drainSeconds, corsOrigins, requestSeconds, maxConnections, ratePerMinute,
                apiKeysFile, calculationMilliseconds, "");
    }

    private enum Variable {
        PORT("8080", 0, 65_535, "port of the service"),
        METRICS_PORT("9090", 0, 65_535, "port of /metrics and of the health paths for the orchestrator"),
        HOST("0.0.0.0", "address to listen on"),
        MAX_BODY_BYTES("262144", 1_024, 16_777_216, "largest request body, bytes"),
        STOP_SECONDS("20", 0, 300, "time for running requests to finish after a stop, seconds"),
        DRAIN_SECONDS("0", 0, 300, "time between readiness off and closing the port, seconds"),
        CORS_ORIGINS("", "origins allowed for browsers, separated by commas; none by default"),
        REQUEST_SECONDS("10", 1, 300, "time limit for the headers and for the body of a request, each, seconds"),
        MAX_CONNECTIONS("2000", FEWEST_CONNECTIONS, 100_000, "maximum number of connections to the port of the service"),
        RATE_LIMIT_PER_MINUTE("0", 0, 1_000_000, "requests a minute for each caller, by key or address; 0 for no limit"),
        API_KEYS_FILE("", "file of name:sha256 lines; only callers with such a key get answers; none by default"),
        CALCULATION_MILLISECONDS("10000", 10, 600_000, "time limit of one calculation, milliseconds"),
        PUBLIC_URL("", "address that callers know the service by, such as https://api.example.org; makes the types of problems absolute"),
        SECURITY_CONTACT("", "where to report a weakness, as mailto:, https:// or tel:, for /.well-known/security.txt"),
        SECURITY_EXPIRES("", "until when SECURITY_CONTACT holds, such as 2027-06-30T00:00:00Z");

        private final String fallback;
        private final int min;
        private final int max;
        private final String meaning;

        Variable(String fallback, int min, int max, String meaning) {
            this.fallback = fallback;
            this.min = min;
            this.max = max;
            this.meaning = meaning;
        }

        Variable(String fallback, String meaning) {
            this(fallback, 0, 0, meaning);
        }

        String text(Map<String, String> environment) {
            return environment.getOrDefault(name(), fallback).strip();
        }

        int number(Map<String, String> environment, List<String> faults) {
            String text = text(environment);
            try {
                int value = Integer.parseInt(text);
                if (value >= min && value <= max) {
                    return value;
                }
            } catch (NumberFormatException notNumber) {
                // reported below, together with a number out of range
            }
            faults.add(name() + " must be a whole number from " + min + " to " + max + ", was " + text);
            return min;
        }
    }

    /**
     * Settings from the environment.
     *
     * @throws IllegalArgumentException that names every variable with an error and its range
     */
    public static Settings from(Map<String, String> environment) {
        List<String> faults = new ArrayList<>();
        String origins = Variable.CORS_ORIGINS.text(environment);
        Settings settings = new Settings(Variable.PORT.number(environment, faults),
                Variable.METRICS_PORT.number(environment, faults), Variable.HOST.text(environment),
                Variable.MAX_BODY_BYTES.number(environment, faults), Variable.STOP_SECONDS.number(environment, faults),
                Variable.DRAIN_SECONDS.number(environment, faults),
                origins.isEmpty() ? Set.of() : Set.of(origins.split("\\s*,\\s*")),
                Variable.REQUEST_SECONDS.number(environment, faults), Variable.MAX_CONNECTIONS.number(environment, faults),
                Variable.RATE_LIMIT_PER_MINUTE.number(environment, faults), Variable.API_KEYS_FILE.text(environment),
                Variable.CALCULATION_MILLISECONDS.number(environment, faults), Variable.PUBLIC_URL.text(environment),
                Variable.SECURITY_CONTACT.text(environment), expires(environment, faults));
        if (settings.port == settings.metricsPort && settings.port != 0) {
            faults.add("METRICS_PORT must differ from PORT, both are " + settings.port);
        }
        settings.corsOrigins.stream().filter(origin -> !ORIGIN.matcher(origin).matches()).sorted()
                .forEach(origin -> faults.add("CORS_ORIGINS must hold origins such as https://example.org, has " + origin));
        if (!settings.securityContact.isEmpty() && !CONTACT.matcher(settings.securityContact).matches()) {
            faults.add("SECURITY_CONTACT must be such as mailto:security@example.org or https://example.org/report, was "
                    + settings.securityContact);
        }
        if (!settings.publicUrl.isEmpty() && !ORIGIN.matcher(settings.publicUrl).matches()) {
            faults.add("PUBLIC_URL must be an address such as https://api.example.org, was " + settings.publicUrl);
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", faults));
        }
        return settings;
    }

    /** RFC 9116, section 2.5.5: needed with a contact, and a time of RFC 3339. */
    private static OffsetDateTime expires(Map<String, String> environment, List<String> faults) {
        String text = Variable.SECURITY_EXPIRES.text(environment);
        if (text.isEmpty() && Variable.SECURITY_CONTACT.text(environment).isEmpty()) {
            return null;
        }
        try {
            return OffsetDateTime.parse(text);
        } catch (DateTimeException noTime) {
            faults.add("SECURITY_EXPIRES must be a time such as 2027-06-30T00:00:00Z, was " + (text.isEmpty() ? "empty" : text));
            return null;
        }
    }

    /** What {@code --help} prints. */
    public static String help() {
        StringBuilder help = new StringBuilder("""
                Brinebook: the calculator for household water softeners, over HTTP.

                Settings, each an environment variable:
                """);
        for (Variable variable : Variable.values()) {
            String range = variable.max == 0 ? "" : ", " + variable.min + " to " + variable.max;
            String fallback = variable.fallback.isEmpty() ? "none" : variable.fallback;
            help.append("  %-24s %s (default %s%s)%n".formatted(variable.name(), variable.meaning, fallback, range));
        }
        return help.append("""

                Traces go by OTLP over HTTP to OTEL_EXPORTER_OTLP_ENDPOINT, if that is set; the standard variables of OpenTelemetry
                say the rest: OTEL_SERVICE_NAME (brinebook), OTEL_TRACES_SAMPLER, OTEL_EXPORTER_OTLP_HEADERS, OTEL_SDK_DISABLED.

                Options: --help prints this.
                """).toString();
    }

    /** Names of all variables. */
    static List<String> names() {
        return Arrays.stream(Variable.values()).map(Enum::name).toList();
    }
}
