package dapple.importing.sheet;

import dapple.light.quantity.Quantity;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** One row, read by what its columns mean. What cannot be read throws {@link BadCellException} with the column's name. */
public final class RowText {
    private static final Pattern ONE_LINE = Pattern.compile("(?U)\\P{Cntrl}*");
    private static final char LOST = '\ufffd';
    private static final int SHOWN = 60;

    /** Above it a length without a unit is likelier in centimetres. */
    private static final double LONGEST_BARE_METRES = 5;

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

    /** Several words of one kind in a cell, with commas, slashes or the like between. */
    public <E extends Enum<E>> Set<E> words(Field field, String kind, Class<E> type) {
        Set<E> all = EnumSet.noneOf(type);
        read(field, cell -> {
            Arrays.stream(line(cell, field.longest()).split("[,;/+&]", -1))
                    .filter(one -> !one.isBlank())
                    .forEach(one -> all.add(Words.find(kind, type, one)
                            .orElseThrow(() -> new BadCellException(Reason.WORD_UNKNOWN, shown(one.strip())))));
            return cell;
        });
        return all;
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
            Optional<Dimension.Unit> headUnit = Columns.unit(table.name(column), dimension);
            double read = dimension.read(cell, table.numbers(), headUnit);
            if (dimension == Dimension.LENGTH && headUnit.isEmpty() && read > LONGEST_BARE_METRES && isBare(cell)) {
                throw new BadCellException(Reason.UNIT_NEEDED, shown(cell));
            }
            if (!(read >= least && read <= most)) {
                throw new BadCellException(Reason.OUT_OF_RANGE, shown(cell));
            }
            return read;
        });
    }

    private static boolean isBare(String cell) {
        return NumberText.of(cell).filter(number -> number.unit().isEmpty()).isPresent();
    }

    /** Whether a column of amounts is for whatever quantity is said elsewhere, and which its name says. */
    public Optional<Quantity> quantityNamed() {
        return table.columns(Field.READ_AMOUNT).stream()
                .flatMap(column -> table.quantityNamed(column).stream())
                .findFirst();
    }

    /** The amount in a column that says neither place nor quantity, read in the unit of a quantity. */
    public Optional<Double> amount(Quantity quantity) {
        for (int column : table.columns(Field.READ_AMOUNT)) {
            String cell = row.cell(column);
            if (!cell.isEmpty()) {
                return Optional.of(number(column, cell, Dimension.of(quantity), quantity.lowest(), quantity.highest()));
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
