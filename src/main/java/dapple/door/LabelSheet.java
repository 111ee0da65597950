package dapple.door;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Sheets of labels by their measures; rows and columns stand in the middle of the page (common practice, no source). */
enum LabelSheet {
    A4_3_BY_7(Paper.A4, 3, 7, 63.5, 38.1, 2.54),
    A4_3_BY_8(Paper.A4, 3, 8, 70, 37, 0),
    A4_2_BY_7(Paper.A4, 2, 7, 99.1, 38.1, 2.5),
    A4_2_BY_4(Paper.A4, 2, 4, 99.1, 67.7, 2.5),
    LETTER_3_BY_10(Paper.LETTER, 3, 10, 2.625 * Paper.MM_PER_INCH, Paper.MM_PER_INCH, 0.125 * Paper.MM_PER_INCH);

    /** The most labels that one of these sheets has. */
    static final int MOST_LABELS = 30;

    private static final double POINTS_PER_INCH = 72;

    private final Paper paper;
    private final int columns;
    private final int rows;
    private final double widthMm;
    private final double heightMm;

    /** Between columns; rows stand edge to edge. */
    private final double gapMm;

    LabelSheet(Paper paper, int columns, int rows, double widthMm, double heightMm, double gapMm) {
        this.paper = paper;
        this.columns = columns;
        this.rows = rows;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.gapMm = gapMm;
    }

    PDRectangle page() {
        return new PDRectangle(points(paper.widthMm), points(paper.heightMm));
    }

    private static float points(double mm) {
        return (float) (mm / Paper.MM_PER_INCH * POINTS_PER_INCH);
    }

    int labels() {
        return columns * rows;
    }

    /**
     * Where a label is, counted along the rows from the top left.
     *
     * @param at from 0, on one page
     */
    Cell cell(int at) {
        double allColumns = columns * widthMm + (columns - 1) * gapMm;
        double left = (paper.widthMm - allColumns) / 2 + at % columns * (widthMm + gapMm);
        int row = at / columns;
        double top = (paper.heightMm - rows * heightMm) / 2 + row * heightMm;
        return new Cell(left, top, widthMm, heightMm);
    }

    /** The place of a label, from the top left of the page. */
    record Cell(double leftMm, double topMm, double widthMm, double heightMm) {}

    private enum Paper {
        A4(210, 297),
        LETTER(8.5 * Paper.MM_PER_INCH, 11 * Paper.MM_PER_INCH);

        private static final double MM_PER_INCH = 25.4;

        private final double widthMm;
        private final double heightMm;

        Paper(double widthMm, double heightMm) {
            this.widthMm = widthMm;
            this.heightMm = heightMm;
        }
    }
}
