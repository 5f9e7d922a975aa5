// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.util.XRLog;
import dev.brinebook.guard.CancellationToken;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Sets a sheet as PDF: tagged as PDF/UA asks, its font embedded. The same sheet gives the same bytes: the document has no
 * date and no random name.
 */
public final class Typesetter {

    private static final String FONT = "Liberation Sans";
    /** The one font that comes with PDFBox; it has the letters of every language spoken here. */
    private static final byte[] FONT_FILE = font();
    private static final int REGULAR = 400;
    private static final FSCacheEx<String, FSCacheValue> METRICS = new FSDefaultCacheStore();

    static {
        XRLog.setLoggingEnabled(false);
    }

    private Typesetter() {
    }

    /**
     * The sheet as PDF; nothing is loaded for it.
     *
     * @throws dev.brinebook.guard.CalculationStopped when this thread is to stop; looked at before each page
     */
    public static byte[] pdf(String xhtml) {
        PdfRendererBuilder builder = new PdfRendererBuilder().usePdfUaAccessibility(true)
                .useFont(() -> new ByteArrayInputStream(FONT_FILE), FONT, REGULAR, FontStyle.NORMAL, true)
                .useCacheStore(CacheStore.PDF_FONT_METRICS, METRICS).useUriResolver((base, uri) -> null)
                .useUnicodeLineBreaker(new WordBreaker())
                .useSVGDrawer(new BarDrawer()).usePageSupplier(Typesetter::page).withProducer("Brinebook").withHtmlContent(xhtml, null);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            CancellationToken.obey();
            renderer.layout();
            PDDocument document = renderer.createPDFKeepOpen();
            PDDocumentInformation information = document.getDocumentInformation();
            information.setCreationDate(null);
            information.setModificationDate(null);
            document.setDocumentId(0L);
            document.save(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static PDPage page(PDDocument document, float width, float height, int number, int ofThisWidth) {
        CancellationToken.obey();
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        return page;
    }

    private static byte[] font() {
        String file = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
        try (InputStream stream = Objects.requireNonNull(PDDocument.class.getResourceAsStream(file), file)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
