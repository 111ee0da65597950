package dapple.importing.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;

/**
 * What was found when a sheet was read through for the first time.
 *
 * @param headAt how many rows, empty ones not counted, stand above the names of the columns
 * @param rows below the names
 */
public record Survey(
        String label,
        String charset,
        String separator,
        int headAt,
        long headLine,
        List<ColumnFound> columns,
        NumberStyle numbers,
        long rows) {
    private static final int HEAD_ROWS = 6;
    private static final int SAMPLES = 3;
    private static final int LONGEST_SAMPLE = 40;
    private static final long STEP = 4096;

    /**
     * Reads a sheet through.
     *
     * @param progress hears the number of rows now and then
     * @throws UnreadableException if it cannot be read
     */
    public static Survey of(Sheet sheet, Columns columns, LongConsumer progress) {
        try (SheetReader reader = SheetReader.of(sheet)) {
            List<SheetRow> first = new ArrayList<>();
            while (first.size() < HEAD_ROWS && reader.hasNext()) {
                first.add(reader.next());
            }
            int headAt = headAt(first, columns);
            if (headAt < 0) {
                throw new UnreadableException(first.isEmpty() ? Fault.EMPTY : Fault.NO_HEADER, sheet.label(), 0);
            }
            Counting counting = new Counting(first.get(headAt));
            first.subList(headAt + 1, first.size()).forEach(counting::add);
            while (reader.hasNext()) {
                counting.add(reader.next());
                if (counting.rows % STEP == 0) {
                    progress.accept(counting.rows);
                }
            }
            return counting.survey(
                    sheet.label(), reader, headAt, first.get(headAt).line());
        }
    }

    /** The first row with the most names that are known; where none is, the first of the widest. */
    private static int headAt(List<SheetRow> first, Columns columns) {
        int best = -1;
        long most = 0;
        for (int at = 0; at < first.size(); at++) {
            SheetRow row = first.get(at);
            long known = row.cells().stream()
                    .filter(cell ->
                            !Cells.plain(cell).isEmpty() && columns.find(cell).isPresent())
                    .count();
            long score = known * SheetReader.MOST_COLUMNS * 2 + (row.filled() > 1 || known > 0 ? row.filled() : 0);
            if (score > most) {
                most = score;
                best = at;
            }
        }
        return best;
    }

    /** What the rows of a sheet show. */
    private static final class Counting {
        private final List<String> names;
        private final List<Set<String>> samples = new ArrayList<>();
        private final DayOrder[] days;
        private final boolean[] others;
        private NumberStyle numbers = NumberStyle.UNDECIDED;
        private long rows;

        Counting(SheetRow head) {
            this.names = head.cells().stream().map(Counting::cut).toList();
            this.days = new DayOrder[names.size()];
            this.others = new boolean[names.size()];
            for (int column = 0; column < days.length; column++) {
                days[column] = DayOrder.NOT_ASKED;
                samples.add(new LinkedHashSet<>());
            }
        }

        private static String cut(String cell) {
            String plain = Cells.plain(cell).replaceAll("(?U)[\\p{Cntrl}\\s]+", " ");
            return plain.length() > SheetFile.LONGEST_NAME ? plain.substring(0, SheetFile.LONGEST_NAME) : plain;
        }

        void add(SheetRow row) {
            rows++;
            for (int column = 0; column < days.length; column++) {
                String cell = row.cell(column);
                if (!cell.isEmpty()) {
                    look(column, cell);
                }
            }
        }

        private void look(int column, String cell) {
            DayOrder order = DayText.evidence(cell);
            days[column] = days[column].and(order);
            others[column] = others[column] || !DayText.isDay(cell);
            if (order == DayOrder.NOT_ASKED
                    && Character.isDigit(cell.charAt(cell.charAt(0) == '-' && cell.length() > 1 ? 1 : 0))) {
                numbers = numbers.and(isDay(cell) ? NumberStyle.UNDECIDED : NumberText.evidence(cell));
            }
            if (samples.get(column).size() < SAMPLES) {
                samples.get(column).add(cell.length() > LONGEST_SAMPLE ? cell.substring(0, LONGEST_SAMPLE) : cell);
            }
        }

        /** Whether points stand between three numbers, or between hours and minutes. */
        private static boolean isDay(String cell) {
            return cell.indexOf('.') >= 0 && cell.indexOf('.') != cell.lastIndexOf('.') && cell.indexOf(',') < 0;
        }

        Survey survey(String label, SheetReader reader, int headAt, long headLine) {
            List<ColumnFound> found = new ArrayList<>();
            for (int column = 0; column < days.length; column++) {
                boolean onlyDays = !others[column] && !samples.get(column).isEmpty();
                found.add(new ColumnFound(names.get(column), List.copyOf(samples.get(column)), days[column], onlyDays));
            }
            return new Survey(
                    label,
                    reader.charset(),
                    String.valueOf(reader.separator()),
                    headAt,
                    headLine,
                    found,
                    numbers,
                    rows);
        }
    }
}
