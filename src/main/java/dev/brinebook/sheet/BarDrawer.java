// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Draws the bars of a chart on paper: of an SVG, its rectangles alone, stretched to the box that the style gives it. A sheet holds no
 * other drawing, and a whole SVG renderer would be larger than everything else that sets a sheet.
 */
final class BarDrawer implements SVGDrawer {

    private static final FSRGBColor INK = new FSRGBColor(0x4b, 0x5a, 0x61);

    /** The drawing in its box, both in the units of the paper. */
    private record Bars(int width, int height, double unitWide, double unitHigh, NodeList rectangles) implements SVGImage {

        @Override
        public int getIntrinsicWidth() {
            return width;
        }

        @Override
        public int getIntrinsicHeight() {
            return height;
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            device.setColor(INK);
            for (int i = 0; i < rectangles.getLength(); i++) {
                Element bar = (Element) rectangles.item(i);
                device.fillRect((int) x, (int) y, (int) Math.round(unitWide * number(bar, "width")),
                        (int) Math.round(unitHigh * number(bar, "height")));
            }
        }
    }

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext style, double width, double height, double dotsPerPixel) {
        String[] view = svg.getAttribute("viewBox").split(" ");
        svg.setAttribute("alt", svg.getAttribute("aria-label"));
        return new Bars((int) width, (int) height, width / Double.parseDouble(view[2]), height / Double.parseDouble(view[3]),
                svg.getElementsByTagName("rect"));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // bars have no text
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // bars have no text
    }

    @Override
    public void close() {
        // nothing is open
    }
}
