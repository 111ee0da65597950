package dapple.importing.sheet;

import dapple.light.quantity.Quantity;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** One row, read by what its columns mean. What cannot be read throws {@link BadCellException} with the column's name. */
public final class RowText {
    private static final Pattern ONE_LINE = Pattern.compile("(?U)\\P{Cntrl}*");
    private static final char LOST = '\ufffd';
    private static final int SHOWN = 60;

    private final SheetTable table;
    private final SheetRow row;

    /**
     * A reading in a column of readings.
     *
     * @param column what it is called
     */
    public record Amount(String column, Meaning.Amount meaning, double amount) {}

    RowText(SheetTable table, SheetRow row) {
        this.table = table;
        this.row = row;
    }

    public long line() {
        return row.line();
    }

    /** Refuses a row with more cells than there are columns. */
    public void checkWidth() {
        for (int column = table.width(); column < row.cells().size(); column++) {
            if (!row.cell(column).isEmpty()) {
                throw new BadCellException(Reason.ROW_TOO_LONG, shown(row.cell(column)));
            }
        }
    }

    public Optional<String> text(Field field) {
        return read(field, cell -> line(cell, field.longest()));
    }

    private static String line(String cell, int longest) {
        if (cell.indexOf(LOST) >= 0) {
            throw new BadCellException(Reason.LETTERS_LOST, shown(cell));
        }
        if (!ONE_LINE.matcher(cell).matches()) {
            throw new BadCellException(Reason.NOT_ONE_LINE, shown(cell));
        }
        if (cell.length() > longest) {
            throw new BadCellException(Reason.TOO_LONG, String.valueOf(longest));
        }
        return cell;
    }

    public Optional<DayTime> day(Field field) {
        return read(field, cell -> DayText.read(cell, table.days()));
    }

    public Optional<LocalTime> time(Field field) {
        return read(field, cell -> TimeText.read(cell).time());
    }

    public <E extends Enum<E>> Optional<E> word(Field field, String kind, Class<E> type) {
        return read(
                field,
                cell -> Words.find(kind, type, line(cell, field.longest()))
                        .orElseThrow(() -> new BadCellException(Reason.WORD_UNKNOWN, shown(cell))));
    }

    /** A number in the unit of its field's dimension, within bounds. */
    public Optional<Double> number(Field field, double least, double most) {
        for (int column : table.columns(field)) {
            String cell = row.cell(column);
            if (!cell.isEmpty()) {
                return Optional.of(number(column, cell, field.dimension(), least, most));
            }
        }
        return Optional.empty();
    }

    private double number(int column, String cell, Dimension dimension, double least, double most) {
        return in(column, () -> {
            double read = dimension.read(cell, table.numbers(), Columns.unit(table.name(column), dimension));
            if (!(read >= least && read <= most)) {
                throw new BadCellException(Reason.OUT_OF_RANGE, shown(cell));
            }
            return read;
        });
    }

    /** The amount in a column that says neither place nor quantity, read in the unit of a quantity. */
    public Optional<Double> amount(Quantity quantity) {
        for (int column : table.columns(Field.READ_AMOUNT)) {
            String cell = row.cell(column);
            if (!cell.isEmpty()) {
                return Optional.of(
                        number(column, cell, Dimension.of(quantity), quantity.lowest(), quantity.highest()));
            }
        }
        return Optional.empty();
    }

    /** The readings in columns that say what they are of. */
    public List<Amount> amounts() {
        List<Amount> found = new ArrayList<>();
        for (SheetTable.AmountColumn one : table.amounts()) {
            String cell = row.cell(one.column());
            if (!cell.isEmpty()) {
                found.add(new Amount(table.name(one.column()), one.meaning(), amount(one, cell)));
            }
        }
        return found;
    }

    private double amount(SheetTable.AmountColumn one, String cell) {
        Quantity quantity = one.meaning().quantity();
        return number(one.column(), cell, Dimension.of(quantity), quantity.lowest(), quantity.highest());
    }

    /** The name of the column of a field, for what is said about it; the first of several. */
    public String column(Field field) {
        return table.columns(field).stream().findFirst().map(table::name).orElse("");
    }

    private <T> Optional<T> read(Field field, Function<String, T> reading) {
        for (int column : table.columns(field)) {
            String cell = row.cell(column);
            if (!cell.isEmpty()) {
                return Optional.of(in(column, () -> reading.apply(cell)));
            }
        }
        return Optional.empty();
    }

    private <T> T in(int column, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (BadCellException bad) {
            throw bad.in(table.name(column));
        }
    }

    private static String shown(String cell) {
        String plain = cell.replaceAll("(?U)\\p{Cntrl}+", " ");
        return plain.length() > SHOWN ? plain.substring(0, SHOWN) + "…" : plain;
    }
}
