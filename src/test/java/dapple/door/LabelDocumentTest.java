package dapple.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Labels as a printer and then a phone see them: the pages as pictures, their codes read by another part of the library. */
class LabelDocumentTest {
    private static final int DOTS_PER_INCH = 200;
    private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;

    /** What a hand and a printer's feed do anyway. */
    private static final double TOLERANCE_MM = 0.5;

    /** A dot of the picture, which has whole ones. */
    private static final double PAGE_TOLERANCE_MM = 25.5 / DOTS_PER_INCH;

    private static final String BASE = "https://dapple.example.org";

    private final Random chance = new Random(7);

    @ParameterizedTest
    @EnumSource
    void everyLabelOfAFullSheetIsReadBack(LabelSheet sheet) throws Exception {
        List<Label> labels = labels(sheet.labels());
        BufferedImage page = pages(LabelDocument.of(labels, sheet, 1)).get(0);
        for (int at = 0; at < labels.size(); at++) {
            assertThat(read(page, sheet.cell(at)).getText())
                    .isEqualTo(labels.get(at).address());
        }
    }

    /**
     * The first and the last label by their left and upper edges, in mm, from the page's upper left corner: worked by hand
     * from the measures of page and labels, columns and rows in the middle of the page, with the usual gaps between columns
     * of 2.54, 0, 2.5, 2.5 and 3.175 mm (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({
        "A4_3_BY_7, 7.21, 15.15, 139.29, 243.75, 38.1",
        "A4_3_BY_8, 0, 0.5, 140, 259.5, 37",
        "A4_2_BY_7, 4.65, 15.15, 106.25, 243.75, 38.1",
        "A4_2_BY_4, 4.65, 13.1, 106.25, 216.2, 67.7",
        "LETTER_3_BY_10, 4.7625, 12.7, 144.4625, 241.3, 25.4"
    })
    void labelsLieWhereTheSheetHasThem(
            LabelSheet sheet, double left, double top, double lastLeft, double lastTop, double height)
            throws Exception {
        BufferedImage page =
                pages(LabelDocument.of(labels(sheet.labels()), sheet, 1)).get(0);
        Place first = symbol(page, sheet.cell(0));
        Place last = symbol(page, sheet.cell(sheet.labels() - 1));
        assertThat(first.down()).isCloseTo(top + height / 2, within(TOLERANCE_MM));
        assertThat(last.down()).isCloseTo(lastTop + height / 2, within(TOLERANCE_MM));
        assertThat(first.across() - first.halfSide() - left).isCloseTo(2, within(TOLERANCE_MM));
        assertThat(last.across() - last.halfSide() - lastLeft).isCloseTo(2, within(TOLERANCE_MM));
    }

    /** ISO 216: A4 is 210 by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 by 11 in, 215.9 by 279.4 mm. Both from memory. */
    @ParameterizedTest
    @CsvSource({"A4_3_BY_7, 210, 297", "LETTER_3_BY_10, 215.9, 279.4"})
    void pagesAreInTrueSize(LabelSheet sheet, double width, double height) throws Exception {
        BufferedImage page = pages(LabelDocument.of(labels(1), sheet, 1)).get(0);
        assertThat(page.getWidth() / DOTS_PER_MM).isCloseTo(width, within(PAGE_TOLERANCE_MM));
        assertThat(page.getHeight() / DOTS_PER_MM).isCloseTo(height, within(PAGE_TOLERANCE_MM));
    }

    @Test
    void aUsedSheetGoesOnWhereItIsFreeAndThenOnASecondPage() throws Exception {
        LabelSheet sheet = LabelSheet.A4_2_BY_4;
        List<Label> labels = labels(5);
        List<BufferedImage> pages = pages(LabelDocument.of(labels, sheet, 6));
        assertThat(pages).hasSize(2);
        assertThat(read(pages.get(0), sheet.cell(5)).getText())
                .isEqualTo(labels.get(0).address());
        assertThat(read(pages.get(1), sheet.cell(1)).getText())
                .isEqualTo(labels.get(4).address());
    }

    @Test
    void theUsedPlacesStayEmpty() throws Exception {
        LabelSheet sheet = LabelSheet.A4_2_BY_4;
        BufferedImage page = pages(LabelDocument.of(labels(3), sheet, 6)).get(0);
        assertThat(darkDots(cut(page, sheet.cell(4)))).isZero();
    }

    @Test
    void theQuietZoneIsFourModulesWide() throws Exception {
        LabelSheet sheet = LabelSheet.A4_2_BY_4;
        BufferedImage label = cut(pages(LabelDocument.of(labels(1), sheet, 1)).get(0), sheet.cell(0));
        Place symbol = symbol(pages(LabelDocument.of(labels(1), sheet, 1)).get(0), sheet.cell(0));
        int fromEdge = (int) Math.floor((2 + 3.9 * symbol.moduleMm()) * DOTS_PER_MM);
        assertThat(darkDots(label.getSubimage(0, 0, fromEdge, label.getHeight())))
                .isZero();
    }

    @Test
    void wordsStandBesideTheCode() throws Exception {
        Label label = labels(1).get(0);
        assertThat(text(LabelDocument.of(List.of(label), LabelSheet.A4_3_BY_7, 1)))
                .contains("E01", "Dry room", label.code().grouped());
    }

    /** Longer than a label is wide, in other scripts, with what is no character at all. */
    @ParameterizedTest
    @CsvSource({"Łužní čtvrť, Lužní ctvrt", "爬虫館, ???", "Wüste, Wüste", "🦎 1, ? 1"})
    void whatTheFontLacksIsReplaced(String room, String shown) throws Exception {
        Label label = new Label("E01", room, DoorCode.random(chance), BASE);
        assertThat(text(LabelDocument.of(List.of(label), LabelSheet.A4_2_BY_4, 1)))
                .contains(shown);
    }

    @Test
    void aLongNameIsCutAtTheEdgeOfItsLabel() throws Exception {
        LabelSheet sheet = LabelSheet.A4_3_BY_7;
        Label label = new Label("Enclosure ".repeat(9), "R".repeat(300), DoorCode.random(chance), BASE);
        BufferedImage page = pages(LabelDocument.of(List.of(label), sheet, 1)).get(0);
        assertThat(darkDots(cut(page, sheet.cell(1)))).isZero();
    }

    private List<Label> labels(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(at -> {
                    DoorCode code = DoorCode.random(chance);
                    String enclosure = at < 10 ? "E0" + at : "E" + at;
                    return new Label(enclosure, "Dry room", code, new BaseAddress(BASE).of(code));
                })
                .toList();
    }

    private static List<BufferedImage> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int at = 0; at < document.getNumberOfPages(); at++) {
                pages.add(renderer.renderImageWithDPI(at, DOTS_PER_INCH, ImageType.GRAY));
            }
            return pages;
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static BufferedImage cut(BufferedImage page, LabelSheet.Cell cell) {
        int left = (int) Math.round(cell.leftMm() * DOTS_PER_MM);
        int top = (int) Math.round(cell.topMm() * DOTS_PER_MM);
        int width = (int) Math.floor(cell.widthMm() * DOTS_PER_MM);
        int height = (int) Math.floor(cell.heightMm() * DOTS_PER_MM);
        return page.getSubimage(
                left, top, Math.min(width, page.getWidth() - left), Math.min(height, page.getHeight() - top));
    }

    private static Result read(BufferedImage page, LabelSheet.Cell cell) throws ReaderException {
        BinaryBitmap seen = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(cut(page, cell))));
        return new QRCodeMultiReader().decodeMultiple(seen, Map.of(DecodeHintType.TRY_HARDER, true))[0];
    }

    /** Where the symbol is on the page, by the three marks in its corners that a reader looks for. */
    private static Place symbol(BufferedImage page, LabelSheet.Cell cell) throws ReaderException {
        Result result = read(page, cell);
        ResultPoint[] marks = result.getResultPoints();
        double across = (marks[0].getX() + marks[2].getX()) / 2 / DOTS_PER_MM + cell.leftMm();
        double down = (marks[0].getY() + marks[2].getY()) / 2 / DOTS_PER_MM + cell.topMm();
        double apartMm = Math.abs(marks[2].getX() - marks[1].getX()) / DOTS_PER_MM;
        return new Place(across, down, apartMm / (MODULES - 7));
    }

    /** By ISO/IEC 18004 a symbol of version 3 is 17 + 4 · 3 modules wide, and holds 42 bytes with level M (from memory). */
    private static final int MODULES = 29;

    private static long darkDots(BufferedImage part) {
        return IntStream.range(0, part.getWidth())
                .mapToLong(x -> IntStream.range(0, part.getHeight())
                        .filter(y -> (part.getRGB(x, y) & 0xFF) < 128)
                        .count())
                .sum();
    }

    /** Its middle, mm from the upper left corner of the page, and how wide a module is. */
    private record Place(double across, double down, double moduleMm) {
        /** With the quiet zone. */
        double halfSide() {
            return (MODULES + 2 * 4) * moduleMm / 2;
        }
    }
}
