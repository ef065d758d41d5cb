package bayproof.report.worksheet;

import bayproof.report.Plain;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Fuse labels at true size as one SVG picture, measured in millimeters. A line of known length stands below them, because
 * a printer that scales the page spoils every label on it.
 */
final class FuseLabels {
    private static final int ABREAST = 3;
    private static final double MARGIN = 5;
    private static final double BETWEEN = 2;
    private static final double RULER = 50;

    private FuseLabels() {
    }

    static String svg(Block.Labels block) {
        double width = block.widthMetres() * 1000;
        double height = block.heightMetres() * 1000;
        int rows = (block.labels().size() + ABREAST - 1) / ABREAST;
        double pageWidth = 2 * MARGIN + ABREAST * width + (ABREAST - 1) * BETWEEN;
        double pageHeight = 2 * MARGIN + rows * (height + BETWEEN) + 12;
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + mm(pageWidth) + "mm\" height=\""
                + mm(pageHeight) + "mm\" viewBox=\"0 0 " + mm(pageWidth) + " " + mm(pageHeight) + "\" font-family=\"sans-serif\">\n"
                + "<title>Fuse labels at true size</title>\n");
        for (int i = 0; i < block.labels().size(); i++) {
            label(svg, block.labels().get(i), MARGIN + i % ABREAST * (width + BETWEEN), MARGIN + i / ABREAST * (height + BETWEEN), width, height);
        }
        double y = pageHeight - MARGIN;
        svg.append("<path d=\"M").append(mm(MARGIN)).append(' ').append(mm(y)).append("h").append(mm(RULER))
                .append("m0 -2v4m-").append(mm(RULER)).append(" -4v4\" stroke=\"#000\" stroke-width=\"0.3\" fill=\"none\"/>\n");
        text(svg, MARGIN, y - 3, 3, "start", "normal", "This line is " + mm(RULER) + " mm long. Measure it before you cut: print at 100 %.");
        return svg.append("</svg>\n").toString();
    }

    private static void label(StringBuilder svg, FuseLabel label, double x, double y, double width, double height) {
        svg.append("<rect x=\"").append(mm(x)).append("\" y=\"").append(mm(y)).append("\" width=\"").append(mm(width)).append("\" height=\"")
                .append(mm(height)).append("\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"0.3\"/>\n");
        double inner = width - 4;
        // The rating is what somebody with a blown fuse in his hand looks for: it is the largest.
        text(svg, x + 2, y + height * 0.36, Math.min(4.5, fitted(label.fuse(), inner * 0.62)), "start", "normal", label.fuse());
        text(svg, x + width - 2, y + height * 0.4, Math.min(7, fitted(label.rating(), inner * 0.36)), "end", "bold", label.rating());
        text(svg, x + 2, y + height * 0.64, Math.min(3.2, fitted(label.guards(), inner)), "start", "normal", label.guards());
        text(svg, x + 2, y + height * 0.88, 3, "start", "normal", FuseLabel.RULE);
        text(svg, x + width - 2, y + height * 0.88, Math.min(3, fitted(label.tag(), inner * 0.45)), "end", "normal", label.tag());
    }

    /** The letter size with which a text has room; a letter is taken as 0.6 of its size wide. */
    private static double fitted(String text, double room) {
        return room / (0.6 * Math.max(1, Plain.length(Plain.text(text))));
    }

    private static void text(StringBuilder svg, double x, double y, double size, String anchor, String weight, String text) {
        svg.append("<text x=\"").append(mm(x)).append("\" y=\"").append(mm(y)).append("\" font-size=\"").append(mm(size)).append("\" text-anchor=\"")
                .append(anchor).append("\" font-weight=\"").append(weight).append("\">").append(escaped(text)).append("</text>\n");
    }

    static String escaped(String raw) {
        return Plain.text(raw).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }

    private static String mm(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
