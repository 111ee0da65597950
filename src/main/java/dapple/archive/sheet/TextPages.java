package dapple.archive.sheet;

import dapple.site.PdfFont;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Lines of text on as many A4 pages as they take, with a foot on each. */
final class TextPages {
    private static final float MARGIN_POINTS = 48;
    private static final float TEXT_POINTS = 8.5F;
    private static final float TITLE_POINTS = 16;
    private static final float HEADING_POINTS = 10.5F;
    private static final float LEADING = 1.3F;
    private static final float WIDTH = PDRectangle.A4.getWidth() - 2 * MARGIN_POINTS;

    private final PdfFont plain = PdfFont.plain();
    private final PdfFont bold = PdfFont.bold();
    private final List<Placed> lines = new ArrayList<>();

    /** A line: cells with where each begins, as a share of the width. */
    private record Placed(List<Cell> cells, PdfFont font, float points, float before) {}

    private record Cell(float at, String text) {}

    void title(String text) {
        bold.wrap(text, TITLE_POINTS, WIDTH).forEach(line -> add(line, bold, TITLE_POINTS, 0));
    }

    void heading(String text) {
        add(text, bold, HEADING_POINTS, HEADING_POINTS * (LEADING - 0.4F));
    }

    void text(String text) {
        plain.wrap(text, TEXT_POINTS, WIDTH).forEach(line -> add(line, plain, TEXT_POINTS, 0));
    }

    private void add(String text, PdfFont font, float points, float before) {
        lines.add(new Placed(List.of(new Cell(0, font.printable(text))), font, points, before));
    }

    /**
     * A row of a table; what is too long for its column is cut.
     *
     * @param begins of each column, a share of the width, the first 0
     */
    void row(List<Double> begins, List<String> texts) {
        List<Cell> cells = new ArrayList<>();
        for (int at = 0; at < texts.size(); at++) {
            double end = at + 1 < begins.size() ? begins.get(at + 1) : 1;
            float room = (float) (end - begins.get(at)) * WIDTH - TEXT_POINTS / 2;
            cells.add(new Cell(
                    begins.get(at).floatValue(),
                    plain.wrap(texts.get(at), TEXT_POINTS, room).get(0)));
        }
        lines.add(new Placed(cells, plain, TEXT_POINTS, 0));
    }

    void write(String foot, OutputStream to) throws IOException {
        try (PDDocument document = new PDDocument()) {
            int next = 0;
            while (next < lines.size()) {
                next = page(document, next, foot + ", page " + (document.getNumberOfPages() + 1));
            }
            document.save(to);
        }
    }

    /** Fills one page; gives the line with which the next begins. */
    private int page(PDDocument document, int first, String foot) throws IOException {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            show(content, plain, TEXT_POINTS, new Cell(0, plain.printable(foot)), MARGIN_POINTS - 2 * TEXT_POINTS);
            float baseline = PDRectangle.A4.getHeight() - MARGIN_POINTS;
            int at = first;
            while (at < lines.size()) {
                Placed line = lines.get(at);
                baseline -= line.before() + line.points() * LEADING;
                if (baseline < MARGIN_POINTS) {
                    return at;
                }
                for (Cell cell : line.cells()) {
                    show(content, line.font(), line.points(), cell, baseline);
                }
                at++;
            }
            return at;
        }
    }

    private static void show(PDPageContentStream content, PdfFont font, float points, Cell cell, float baseline)
            throws IOException {
        content.beginText();
        content.setFont(font.font(), points);
        content.newLineAtOffset(MARGIN_POINTS + cell.at() * WIDTH, baseline);
        content.showText(cell.text());
        content.endText();
    }
}
