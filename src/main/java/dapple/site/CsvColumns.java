package dapple.site;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The columns of a table that leaves as a file, from left to right. A title is the part of a text's key after
 * {@code column.}; the unit of numbers stands in that text.
 *
 * @param <T> what a row is made of
 */
public final class CsvColumns<T> {
    private static final MathContext DIGITS = new MathContext(6);

    private final List<Column<T>> columns;

    private CsvColumns(List<Column<T>> columns) {
        this.columns = columns;
    }

    public static <T> CsvColumns<T> none() {
        return new CsvColumns<>(List.of());
    }

    /**
     * With one more.
     *
     * @param cell gives text, a number, a day, an instant, yes or no, an Optional or several of these
     */
    public CsvColumns<T> with(String title, Function<? super T, ?> cell) {
        return and(new Column<>(title, Optional.empty(), cell));
    }

    /**
     * With one of words.
     *
     * @param prefix of the words' keys
     * @param cell gives an enum, an Optional or several of these
     */
    public CsvColumns<T> word(String title, String prefix, Function<? super T, ?> cell) {
        return and(new Column<>(title, Optional.of(prefix), cell));
    }

    private CsvColumns<T> and(Column<T> next) {
        return new CsvColumns<>(Stream.concat(columns.stream(), Stream.of(next)).toList());
    }

    /** A computed number with six digits that count, more than any meter gives. */
    public static double computed(double number) {
        return BigDecimal.valueOf(number).round(DIGITS).doubleValue();
    }

    List<Column<T>> all() {
        return columns;
    }

    record Column<T>(String title, Optional<String> prefix, Function<? super T, ?> cell) {}
}
