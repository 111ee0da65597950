package dapple.site;

import java.util.function.Consumer;

/** Gives the rows of a table one after another, as they are found. */
@FunctionalInterface
public interface CsvRows<T> {
    void each(Consumer<T> row);
}
