package dapple.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Readings of one lamp on a bench as they were typed: all of it text, so that nothing is lost whatever is wrong.
 *
 * @param key of this entry: a form sent twice is one series
 * @param distances from the middle of what emits, cm, row by row
 * @param amounts that the meter showed, row by row
 * @param wanted an amount whose height is asked for
 */
record BenchForm(
        String key,
        String quantity,
        String meterId,
        String measuredAt,
        String measuredAtWhich,
        List<String> distances,
        List<String> amounts,
        String wanted) {
    static final int ROWS = 8;

    BenchForm(
            @Nullable String key,
            @Nullable String quantity,
            @Nullable String meterId,
            @Nullable String measuredAt,
            @Nullable String measuredAtWhich,
            @Nullable List<String> distances,
            @Nullable List<String> amounts,
            @Nullable String wanted) {
        this.key = Objects.requireNonNullElse(key, "");
        this.quantity = Objects.requireNonNullElse(quantity, "");
        this.meterId = Objects.requireNonNullElse(meterId, "");
        this.measuredAt = Objects.requireNonNullElse(measuredAt, "");
        this.measuredAtWhich = Objects.requireNonNullElse(measuredAtWhich, "");
        this.distances = filled(distances);
        this.amounts = filled(amounts);
        this.wanted = Objects.requireNonNullElse(wanted, "");
    }

    static BenchForm empty(String measuredAt) {
        return new BenchForm(UUID.randomUUID().toString(), "UV_INDEX", "", measuredAt, "", List.of(), List.of(), "");
    }

    /** A list that can be written: its rows come one by one. */
    private static List<String> filled(@Nullable List<String> typed) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            rows.add(typed == null || row >= typed.size() ? "" : Objects.requireNonNullElse(typed.get(row), ""));
        }
        return rows;
    }
}
