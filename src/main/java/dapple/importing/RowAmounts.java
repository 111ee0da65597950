package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.DayTime;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.RowText;
import dapple.importing.sheet.Subject;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the readings of a row: one in the columns of amounts that name a place, and one with point and quantity of its own. */
final class RowAmounts {
    private final RowText row;
    private final ZoneId zone;
    private final Instant now;
    private final Consumer<Said> things;
    private final Function<String, Optional<Quantity>> meters;
    private final List<SaidReading> readings = new ArrayList<>();

    RowAmounts(
            RowText row, ZoneId zone, Instant now, Consumer<Said> things, Function<String, Optional<Quantity>> meters) {
        this.row = row;
        this.zone = zone;
        this.now = now;
        this.things = things;
        this.meters = meters;
    }

    List<SaidReading> read() {
        for (RowText.Amount one : row.amounts()) {
            Meaning.Amount meaning = one.meaning();
            meaning.enclosure().ifPresent(code -> things.accept(Said.of(Subject.ENCLOSURE, Keys.of(code), code)));
            String enclosure = meaning.enclosure()
                    .or(() -> row.text(Field.ENCLOSURE_CODE))
                    .map(Keys::of)
                    .orElseThrow(() -> missing(Field.ENCLOSURE_CODE, one.column()));
            add(enclosure, point(enclosure, one), meaning.quantity(), one.amount());
        }
        single();
        return readings;
    }

    private String point(String enclosure, RowText.Amount one) {
        Meaning.Amount meaning = one.meaning();
        return meaning.point()
                .map(code -> Keys.within(enclosure, code))
                .or(() -> meaning.role().map(role -> role(enclosure, role)))
                .or(() -> row.text(Field.POINT_CODE).map(name -> Keys.within(enclosure, name)))
                .orElseThrow(() -> missing(Field.POINT_CODE, one.column()));
    }

    private String role(String enclosure, PointRole role) {
        String key = Keys.role(enclosure, role);
        things.accept(Said.of(Subject.POINT, key, role.name())
                .with(Field.ENCLOSURE_CODE, Optional.of(enclosure))
                .with(Field.POINT_ROLE, Optional.of(role)));
        return key;
    }

    private void single() {
        Quantity quantity = row.word(Field.READ_QUANTITY, "quantity", Quantity.class)
                .or(row::quantityNamed)
                .or(() -> row.text(Field.METER_CODE).map(Keys::of).flatMap(meters))
                .orElse(Quantity.UV_INDEX);
        Optional<Double> amount = row.amount(quantity);
        if (amount.isEmpty()) {
            return;
        }
        String column = row.column(Field.READ_AMOUNT);
        String enclosure =
                row.text(Field.ENCLOSURE_CODE).map(Keys::of).orElseThrow(() -> missing(Field.ENCLOSURE_CODE, column));
        String point = row.text(Field.POINT_CODE)
                .map(name -> Keys.within(enclosure, name))
                .orElseThrow(() -> missing(Field.POINT_CODE, column));
        add(enclosure, point, quantity, amount.get());
    }

    private void add(String enclosure, String point, Quantity quantity, double amount) {
        DayTime day = row.day(Field.READ_ON).orElseThrow(() -> missing(Field.READ_ON, row.column(Field.READ_ON)));
        DayTime when = row.time(Field.READ_AT).map(day::at).orElse(day);
        Instant at = named(row.column(Field.READ_ON), () -> when.instant(zone, now));
        Optional<String> meter = row.text(Field.METER_CODE);
        things.accept(Said.of(Subject.POINT, point, point.substring(point.lastIndexOf('\n') + 1))
                .with(Field.ENCLOSURE_CODE, Optional.of(enclosure))
                .with(Field.READ_QUANTITY, Optional.of(Set.of(quantity))));
        meter.ifPresent(code -> things.accept(
                Said.of(Subject.METER, Keys.of(code), code).with(Field.READ_QUANTITY, Optional.of(Set.of(quantity)))));
        if (meter.isEmpty()) {
            things.accept(Said.of(Subject.METER, Keys.noMeter(quantity), "")
                    .with(Field.METER_QUANTITY, Optional.of(quantity)));
        }
        readings.add(new SaidReading(
                enclosure,
                point,
                quantity,
                amount,
                at,
                when.isDayOnly(),
                meter.map(Keys::of),
                row.text(Field.READ_BY)));
    }

    private static BadCellException missing(Field field, String column) {
        return new BadCellException(Reason.MISSING, field.name(), column);
    }

    /** Says in which column something was wrong. */
    static <T> T named(String column, Supplier<T> reading) {
        try {
            return reading.get();
        } catch (BadCellException bad) {
            throw bad.column().isEmpty() ? new BadCellException(bad.reason(), bad.text(), column) : bad;
        }
    }
}
