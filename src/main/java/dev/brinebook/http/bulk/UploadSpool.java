// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import dev.brinebook.text.Message;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * A whole upload, compressed in a file that has no name any more, so that it is gone with the process at the latest. For callers that
 * write everything before they read.
 */
final class UploadSpool implements AutoCloseable {

    /** Longest upload; as much again is read past, so that its caller sees the error. */
    static final long MAX_UPLOAD_BYTES = 104_857_600;
    /** Bytes of all uploads on the disk at once. */
    static final long MAX_BYTES_ON_DISK = 268_435_456;

    private static final int BUFFER_BYTES = 16_384;

    private final FileChannel file;
    private final AtomicLong onDisk;
    private long held;

    private UploadSpool(AtomicLong onDisk) throws IOException {
        Path path = Files.createTempFile("brinebook-upload", null);
        try {
            this.file = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.DELETE_ON_CLOSE);
        } finally {
            Files.deleteIfExists(path);
        }
        this.onDisk = onDisk;
    }

    /**
     * Receives an upload to its end.
     *
     * @param onDisk bytes of all uploads on the disk, counted here
     * @param moved called whenever something has come
     * @throws ProblemException when it is too long, breaks off, or finds no place
     */
    static UploadSpool receive(InputStream upload, AtomicLong onDisk, Runnable moved) {
        UploadSpool spool;
        try {
            spool = new UploadSpool(onDisk);
        } catch (IOException noDisk) {
            throw noPlace();
        }
        try {
            spool.fill(upload, moved);
            return spool;
        } catch (ProblemException refused) {
            spool.close();
            throw refused;
        }
    }

    private void fill(InputStream upload, Runnable moved) {
        byte[] buffer = new byte[BUFFER_BYTES];
        long come = 0;
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try (OutputStream out = new DeflaterOutputStream(new BufferedOutputStream(new Counted(), BUFFER_BYTES), deflater, BUFFER_BYTES)) {
            for (int n = read(upload, buffer); n >= 0 && come <= 2 * MAX_UPLOAD_BYTES; n = read(upload, buffer)) {
                moved.run();
                come += n;
                if (come <= MAX_UPLOAD_BYTES) {
                    out.write(buffer, 0, n);
                }
            }
        } catch (IOException diskFull) {
            throw noPlace();
        } finally {
            deflater.end();
        }
        if (come > MAX_UPLOAD_BYTES) {
            throw new ProblemException(ProblemType.BODY_TOO_LARGE, Message.of("uploadSpool.bodyMoreThanBytes", MAX_UPLOAD_BYTES));
        }
    }

    private static int read(InputStream upload, byte[] buffer) {
        try {
            return upload.read(buffer);
        } catch (IOException broken) {
            throw new ProblemException(ProblemType.ofBroken(broken), ProblemType.ofBroken(broken).explanation());
        }
    }

    private static ProblemException noPlace() {
        return new ProblemException(ProblemType.OVERLOADED, Message.of("uploadSpool.noPlace"));
    }

    /** Writes to the file, and counts. */
    private final class Counted extends OutputStream {

        private final OutputStream out = Channels.newOutputStream(file);

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            held += length;
            if (onDisk.addAndGet(length) > MAX_BYTES_ON_DISK) {
                throw new IOException("too much on the disk");
            }
            out.write(bytes, offset, length);
        }
    }

    /** The upload from its start. */
    InputStream read() throws IOException {
        file.position(0);
        return new InflaterInputStream(Channels.newInputStream(file));
    }

    @Override
    public void close() {
        onDisk.addAndGet(-held);
        held = 0;
        try {
            file.close();
        } catch (IOException closedAnyway) {
            // the file has no name, and the system takes its bytes back
        }
    }
}
