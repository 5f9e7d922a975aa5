// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Files that the service answers with, from the class path. */
public final class Resources {

    private static final Properties VERSIONS = versions();

    private Resources() {
    }

    /** A file beside this class. */
    public static byte[] own(String name) {
        return read("/dev/brinebook/http/" + name);
    }

    /** A committed example of the contract. */
    public static byte[] example(String name) {
        return read("/openapi/examples/" + name);
    }

    /** A file of the packaged contract viewer. */
    public static byte[] viewer(String name) {
        return read("/META-INF/resources/webjars/swagger-ui/" + VERSIONS.getProperty("swagger-ui") + "/" + name);
    }

    /** A file of a library of the pages, packaged for npm. */
    public static byte[] library(String library, String name) {
        return read("/META-INF/resources/webjars/" + library + "/" + VERSIONS.getProperty(library) + "/" + name);
    }

    /** Version of the service. */
    public static String version() {
        return VERSIONS.getProperty("version");
    }

    private static byte[] read(String path) {
        try (InputStream stream = Resources.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("no resource " + path);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Properties versions() {
        try (InputStream stream = Resources.class.getResourceAsStream("version.properties")) {
            Properties properties = new Properties();
            properties.load(stream);
            return properties;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
