package dapple.approval;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.DecimalText;
import dapple.site.SourceMark;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.validation.Errors;

/** Reads the cells of a form, with a message at each field that wants another look. */
final class CellReading {
    private static final BigDecimal MOST_UVI = new BigDecimal("99.9");
    private static final BigDecimal MOST = new BigDecimal("999999");
    private static final int DECIMALS = 2;

    private final TargetForm form;
    private final Errors errors;

    CellReading(TargetForm form, Errors errors) {
        this.form = form;
        this.errors = errors;
    }

    /** The cells; incomplete if there are messages. */
    List<SourcedLimit> limits() {
        List<SourcedLimit> read = new ArrayList<>();
        for (Quantity quantity : CellName.quantities()) {
            if (quantity == Quantity.UV_INDEX || isBegun(quantity)) {
                read.addAll(limits(quantity));
            }
        }
        return read;
    }

    private boolean isBegun(Quantity quantity) {
        return Arrays.stream(LimitPlace.values())
                .map(place -> new CellName(quantity, place))
                .flatMap(name -> Stream.of(name.low(), name.high()))
                .anyMatch(name -> !form.cell(name).isBlank());
    }

    private List<SourcedLimit> limits(Quantity quantity) {
        CellName basking = new CellName(quantity, LimitPlace.BASKING);
        CellName shade = new CellName(quantity, LimitPlace.SHADE);
        CellName ceiling = new CellName(quantity, LimitPlace.CEILING);
        Optional<Double> low = number(quantity, basking.low());
        Optional<Double> high = number(quantity, basking.high());
        Optional<Double> most = number(quantity, shade.high());
        Optional<Double> cap =
                form.cell(ceiling.high()).isBlank() ? noCeiling(ceiling, high) : number(quantity, ceiling.high());
        refuseAbove(low, high, basking.low(), "target.low-above-high");
        refuseAbove(most, low, shade.high(), "target.shade-above-low");
        refuseAbove(high, cap, ceiling.high(), "target.ceiling-below-high");
        List<SourcedLimit> read = new ArrayList<>();
        low.flatMap(from -> high.filter(to -> from <= to).map(to -> new Band(from, to)))
                .flatMap(band -> sourced(basking, band))
                .ifPresent(read::add);
        most.flatMap(to -> sourced(shade, Band.atMost(to))).ifPresent(read::add);
        cap.flatMap(to -> sourced(ceiling, Band.atMost(to))).ifPresent(read::add);
        return read;
    }

    private Optional<Double> noCeiling(CellName ceiling, Optional<Double> baskingHigh) {
        if (ceiling.quantity() == Quantity.UV_INDEX && baskingHigh.isPresent()) {
            double suggested = CommonPractice.ceiling(baskingHigh.get()).band().high();
            reject(ceiling.high(), "target.ceiling-suggested", CellName.plain(suggested));
        } else {
            reject(ceiling.high(), "target.cell.needed");
        }
        return Optional.empty();
    }

    private Optional<Double> number(Quantity quantity, String name) {
        String typed = form.cell(name);
        if (typed.isBlank()) {
            reject(name, "target.cell.needed");
            return Optional.empty();
        }
        BigDecimal most = quantity == Quantity.UV_INDEX ? MOST_UVI : MOST;
        Optional<Double> number = DecimalText.read(typed)
                .filter(read -> read.signum() >= 0 && read.compareTo(most) <= 0)
                .filter(read -> read.stripTrailingZeros().scale() <= DECIMALS)
                .map(BigDecimal::doubleValue);
        if (number.isEmpty()) {
            reject(name, "target.cell.wrong", most.toPlainString());
        }
        return number;
    }

    /** A message where the first is above the second. */
    private void refuseAbove(Optional<Double> first, Optional<Double> second, String name, String code) {
        if (first.isPresent() && second.isPresent() && first.get() > second.get()) {
            reject(name, code);
        }
    }

    private Optional<SourcedLimit> sourced(CellName name, Band band) {
        Optional<SourceMark> mark = SourceText.mark(form.cell(name.mark()));
        if (mark.isEmpty()) {
            reject(name.mark(), "target.mark.choose");
        }
        String source = form.cell(name.source());
        if (!SourceText.isLine(source)) {
            reject(name.source(), "target.source.needed", String.valueOf(SourceText.LONGEST));
            return Optional.empty();
        }
        return mark.map(chosen -> new SourcedLimit(name.quantity(), name.place(), band, chosen, source.strip()));
    }

    private void reject(String name, String code, String... arguments) {
        errors.rejectValue("cells[" + name + "]", code, arguments, null);
    }
}
