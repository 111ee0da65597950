package dapple.commissioning;

import dapple.commissioning.BenchEntry.Row;
import dapple.lamp.LampOutput;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.site.DecimalText;
import dapple.site.Occurrence;
import dapple.site.When;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** Reads a bench series from its form, with a message at every field that cannot be read. */
final class BenchTyping {
    private static final double CENTIMETRES = 100;
    private static final double NEAREST_CENTIMETRES = 1;
    private static final double FARTHEST_CENTIMETRES = 2000;
    private static final double MOST = 9_999_999;
    private static final int FEWEST = 2;

    private final BenchForm form;
    private final List<MeterFacts> meters;
    private final Errors errors;

    BenchTyping(BenchForm form, List<MeterFacts> meters, Errors errors) {
        this.form = form;
        this.meters = meters;
        this.errors = errors;
    }

    /** The series; empty if any field has an error then. */
    Optional<BenchEntry> read(When when) {
        Optional<UUID> key = key();
        Optional<MeterFacts> meter = meter(quantity());
        List<Row> rows = rows();
        Optional<Double> wanted = form.wanted().isBlank() ? Optional.empty() : number("wanted", form.wanted(), 0, MOST);
        LocalDateTime typed = typed();
        return when.read("measuredAt", typed, which(), errors)
                .filter(at -> !errors.hasErrors())
                .flatMap(
                        at -> key.flatMap(entry -> meter.map(known -> new BenchEntry(entry, known, at, rows, wanted))));
    }

    private Optional<UUID> key() {
        try {
            return Optional.of(UUID.fromString(form.key()));
        } catch (IllegalArgumentException notOurs) {
            errors.reject("bench.key");
            return Optional.empty();
        }
    }

    private Optional<Quantity> quantity() {
        Optional<Quantity> found = LampOutput.QUANTITIES.stream()
                .filter(quantity -> quantity.name().equals(form.quantity()))
                .findFirst();
        if (found.isEmpty()) {
            errors.rejectValue("quantity", "lamp.quantity.other");
        }
        return found;
    }

    private Optional<MeterFacts> meter(Optional<Quantity> quantity) {
        Optional<MeterFacts> found = meters.stream()
                .filter(meter -> String.valueOf(meter.id()).equals(form.meterId()))
                .findFirst();
        if (found.isEmpty()) {
            errors.rejectValue("meterId", "bench.meter.needed");
        } else if (quantity.isPresent() && found.get().quantity() != quantity.get()) {
            errors.rejectValue("meterId", "visit.meter.wrong");
        }
        return found;
    }

    private @Nullable LocalDateTime typed() {
        try {
            return LocalDateTime.parse(form.measuredAt());
        } catch (DateTimeParseException unreadable) {
            return null;
        }
    }

    private @Nullable Occurrence which() {
        return Stream.of(Occurrence.values())
                .filter(one -> one.name().equals(form.measuredAtWhich()))
                .findFirst()
                .orElse(null);
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int row = 0; row < BenchForm.ROWS; row++) {
            String distance = form.distances().get(row);
            String amount = form.amounts().get(row);
            if (!distance.isBlank() || !amount.isBlank()) {
                Optional<Double> centimetres =
                        number("distances[" + row + "]", distance, NEAREST_CENTIMETRES, FARTHEST_CENTIMETRES);
                number("amounts[" + row + "]", amount, 0, MOST)
                        .ifPresent(
                                shown -> centimetres.ifPresent(away -> rows.add(new Row(away / CENTIMETRES, shown))));
            }
        }
        if (rows.stream().map(Row::distanceMetres).distinct().count() < FEWEST && !errors.hasFieldErrors()) {
            errors.rejectValue("distances[0]", "bench.rows.few");
        }
        return rows;
    }

    private Optional<Double> number(String field, String typed, double least, double most) {
        Optional<Double> found =
                DecimalText.read(typed).map(Number::doubleValue).filter(number -> number >= least && number <= most);
        if (found.isEmpty()) {
            errors.rejectValue(field, "bench.number." + field.replaceAll("\\[.*", ""));
        }
        return found;
    }
}
