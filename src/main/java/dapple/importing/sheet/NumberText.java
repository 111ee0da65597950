package dapple.importing.sheet;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: 1.7, 1,7, 1.234,5, 1 200 lx.
 *
 * @param digits with whatever separators they have
 * @param unit what stands behind; empty: nothing
 */
record NumberText(boolean isNegative, String digits, String unit) {
    private static final Pattern NUMBER = Pattern.compile(
            "([+\\-−]?)\\s?([0-9](?:[0-9.,]|['’ \\u00a0\\u202f](?=[0-9]{3}))*)[\\s\\u00a0\\u202f]*(.*)");
    private static final Pattern GROUPED = Pattern.compile("[0-9]{1,3}(?:['’ \\u00a0\\u202f][0-9]{3})+(?:[.,][0-9]+)?");
    private static final int THOUSANDS = 3;
    private static final int MOST_DIGITS = 15;
    private static final int LONGEST = 60;

    static Optional<NumberText> of(String cell) {
        if (cell.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher found = NUMBER.matcher(cell);
        return found.matches()
                ? Optional.of(new NumberText(
                        found.group(1).equals("-") || found.group(1).equals("−"), found.group(2), found.group(3)))
                : Optional.empty();
    }

    /** What a cell shows of how numbers are written in its sheet. */
    static NumberStyle evidence(String cell) {
        if (cell.isEmpty() || cell.length() > LONGEST || (cell.indexOf(',') < 0 && cell.indexOf('.') < 0)) {
            return NumberStyle.UNDECIDED;
        }
        return of(cell).map(NumberText::style).orElse(NumberStyle.UNDECIDED);
    }

    private NumberStyle style() {
        int point = digits.lastIndexOf('.');
        int comma = digits.lastIndexOf(',');
        if (point >= 0 && comma >= 0) {
            return point > comma ? NumberStyle.POINT : NumberStyle.COMMA;
        }
        char mark = point >= 0 ? '.' : ',';
        if (point < 0 && comma < 0) {
            return NumberStyle.UNDECIDED;
        }
        NumberStyle asDecimal = mark == '.' ? NumberStyle.POINT : NumberStyle.COMMA;
        if (digits.indexOf(mark) != digits.lastIndexOf(mark)) {
            return asDecimal == NumberStyle.POINT && isGrouped('.')
                    ? NumberStyle.COMMA
                    : isGrouped(',') ? NumberStyle.POINT : NumberStyle.UNDECIDED;
        }
        return mayBeThousands(digits.indexOf(mark)) ? NumberStyle.UNDECIDED : asDecimal;
    }

    /** Whether one to three digits, the first not 0, stand before a mark and exactly three behind it. */
    private boolean mayBeThousands(int mark) {
        return digits.length() - mark - 1 == THOUSANDS && mark <= THOUSANDS && !digits.startsWith("0");
    }

    private boolean isGrouped(char mark) {
        return digits.matches("[0-9]{1,3}(?:" + Pattern.quote(String.valueOf(mark)) + "[0-9]{3})+");
    }

    /** @throws BadCellException if it is no number, or could be two */
    BigDecimal read(NumberStyle style) {
        if (digits.length() > MOST_DIGITS + THOUSANDS * 2) {
            throw bad(Reason.NOT_A_NUMBER);
        }
        BigDecimal read = new BigDecimal(plain(style));
        return isNegative ? read.negate() : read;
    }

    private String plain(NumberStyle style) {
        String text = withoutSpaces();
        int point = text.lastIndexOf('.');
        int comma = text.lastIndexOf(',');
        if (point >= 0 && comma >= 0) {
            char decimal = point > comma ? '.' : ',';
            return decimal(ungrouped(text, decimal == '.' ? ',' : '.', decimal), decimal);
        }
        if (point < 0 && comma < 0) {
            return text;
        }
        char mark = point >= 0 ? '.' : ',';
        if (text.indexOf(mark) != text.lastIndexOf(mark)) {
            return ungrouped(text, mark, '\0');
        }
        boolean isOpen = mayBeThousands(digits.indexOf(mark)) && digits.equals(text);
        if (!isOpen) {
            return decimal(text, mark);
        }
        if (!style.isDecided()) {
            throw bad(Reason.NUMBER_AMBIGUOUS);
        }
        boolean isDecimal = (style == NumberStyle.POINT) == (mark == '.');
        return isDecimal ? decimal(text, mark) : ungrouped(text, mark, '\0');
    }

    private String withoutSpaces() {
        String text = digits.replaceAll("['’ \\u00a0\\u202f]", "");
        if (!text.equals(digits) && !GROUPED.matcher(digits).matches()) {
            throw bad(Reason.NOT_A_NUMBER);
        }
        return text;
    }

    /** Without the marks of thousands, which must stand before every three digits. */
    private String ungrouped(String text, char thousands, char decimal) {
        int end = text.indexOf(decimal);
        String whole = end < 0 ? text : text.substring(0, end);
        if (!whole.matches("[0-9]{1,3}(?:" + Pattern.quote(String.valueOf(thousands)) + "[0-9]{3})+")) {
            throw bad(Reason.NOT_A_NUMBER);
        }
        return whole.replace(String.valueOf(thousands), "") + (end < 0 ? "" : text.substring(end));
    }

    private String decimal(String text, char decimal) {
        String plain = text.replace(decimal, '.');
        if (!plain.matches("[0-9]+\\.[0-9]+")) {
            throw bad(Reason.NOT_A_NUMBER);
        }
        return plain;
    }

    private BadCellException bad(Reason reason) {
        return new BadCellException(reason, (isNegative ? "-" : "") + digits + unit);
    }
}
