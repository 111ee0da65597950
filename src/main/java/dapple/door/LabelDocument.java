package dapple.door;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import dapple.door.LabelSheet.Cell;
import dapple.site.PdfFont;
import dapple.site.PdfFont.Fitted;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Labels in true size on sheets, as PDF: QR codes by ISO/IEC 18004 with the addresses of the doors, and words beside. */
final class LabelDocument {
    private static final double POINTS_PER_MM = 72 / 25.4;

    /** Between the edge of a label and what stands on it: labels are never fed quite straight (common practice, no source). */
    private static final double MARGIN_MM = 2;

    private static final double LARGEST_SYMBOL_MM = 45;

    /** The most of a label's width that its symbol takes, so that there is room for words. */
    private static final double SYMBOL_SHARE = 0.45;

    /** Light modules around the symbol, which a reader needs: 4 [iso18004]. */
    private static final int QUIET_MODULES = 4;

    private static final float ENCLOSURE_POINTS = 30;
    private static final float ROOM_POINTS = 10;
    private static final float CODE_POINTS = 14;
    private static final float LEADING = 1.25F;

    private final LabelSheet sheet;
    private final PDDocument document;
    private final PdfFont bold = PdfFont.bold();
    private final PdfFont plain = PdfFont.plain();
    private final PdfFont even = PdfFont.even();

    private LabelDocument(LabelSheet sheet, PDDocument document) {
        this.sheet = sheet;
        this.document = document;
    }

    /**
     * The document.
     *
     * @param firstPlace the place of the first label on the first sheet, from 1: those before have been used
     */
    static byte[] of(List<Label> labels, LabelSheet sheet, int firstPlace) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            LabelDocument printed = new LabelDocument(sheet, document);
            int used = firstPlace - 1;
            int first = 0;
            do {
                int next = Math.min(labels.size(), first + sheet.labels() - used);
                printed.addPage(labels.subList(first, next), used);
                first = next;
                used = 0;
            } while (first < labels.size());
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot write labels", cause);
        }
    }

    private void addPage(List<Label> labels, int used) throws IOException {
        PDPage page = new PDPage(sheet.page());
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            for (int at = 0; at < labels.size(); at++) {
                add(labels.get(at), sheet.cell(used + at), content);
            }
        }
    }

    private void add(Label label, Cell cell, PDPageContentStream content) throws IOException {
        double side =
                Math.min(Math.min(cell.heightMm() - 2 * MARGIN_MM, LARGEST_SYMBOL_MM), cell.widthMm() * SYMBOL_SHARE);
        double left = cell.leftMm() + MARGIN_MM;
        double top = cell.topMm() + (cell.heightMm() - side) / 2;
        addSymbol(symbol(label.address()), new Cell(left, top, side, side), content);
        double room = cell.widthMm() - side - 2 * MARGIN_MM;
        addWords(label, new Cell(left + side, cell.topMm(), room, cell.heightMm()), content);
    }

    /** One dot a module; its quiet zone belongs to it. */
    private static BitMatrix symbol(String address) {
        try {
            return new QRCodeWriter()
                    .encode(
                            address,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES));
        } catch (WriterException cause) {
            throw new IllegalArgumentException("the address of a door is too long for a QR code", cause);
        }
    }

    private void addSymbol(BitMatrix symbol, Cell place, PDPageContentStream content) throws IOException {
        double module = place.widthMm() / symbol.getWidth();
        for (int row = 0; row < symbol.getHeight(); row++) {
            for (int from = 0; from < symbol.getWidth(); from++) {
                int to = endOfDark(symbol, from, row);
                if (to > from) {
                    double topMm = place.topMm() + row * module;
                    content.addRect(
                            points(place.leftMm() + from * module),
                            fromBottom(topMm + module),
                            points((to - from) * module),
                            points(module));
                    from = to;
                }
            }
        }
        content.fill();
    }

    /** Where a run of dark modules ends; where it begins, if the module is light. */
    private static int endOfDark(BitMatrix symbol, int from, int row) {
        int to = from;
        while (to < symbol.getWidth() && symbol.get(to, row)) {
            to++;
        }
        return to;
    }

    private void addWords(Label label, Cell place, PDPageContentStream content) throws IOException {
        float width = points(place.widthMm());
        List<Fitted> lines = List.of(
                bold.fit(label.enclosure(), ENCLOSURE_POINTS, width),
                plain.fit(label.room(), ROOM_POINTS, width),
                even.fit(label.code().grouped(), CODE_POINTS, width));
        float height = (float)
                lines.stream().mapToDouble(line -> line.points() * LEADING).sum();
        float baseline = fromBottom(place.topMm() + place.heightMm() / 2) + height / 2;
        for (Fitted line : lines) {
            baseline -= line.points() * LEADING;
            content.beginText();
            content.setFont(line.font().font(), line.points());
            content.newLineAtOffset(points(place.leftMm()), baseline + line.points() * (LEADING - 1));
            content.showText(line.text());
            content.endText();
        }
    }

    private float fromBottom(double fromTopMm) {
        return sheet.page().getHeight() - points(fromTopMm);
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
