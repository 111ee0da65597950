package dapple.approval;

import dapple.site.DecimalText;
import dapple.site.SourceMark;
import dapple.target.Photoperiod;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.validation.Errors;

/** Reads the hours of light of a form: all twelve months, or none. */
final class HoursReading {
    private static final BigDecimal DAY = BigDecimal.valueOf(24);

    private final TargetForm form;
    private final Errors errors;

    HoursReading(TargetForm form, Errors errors) {
        this.form = form;
        this.errors = errors;
    }

    /** The photoperiod; none if nothing is typed or there are messages. */
    Optional<Photoperiod> photoperiod() {
        if (IntStream.rangeClosed(1, Photoperiod.MONTHS)
                .allMatch(month -> form.hour(month).isBlank())) {
            return Optional.empty();
        }
        List<Double> hours = new ArrayList<>();
        for (int month = 1; month <= Photoperiod.MONTHS; month++) {
            hour(month).ifPresent(hours::add);
        }
        Optional<SourceMark> mark = SourceText.mark(form.hoursMark());
        if (mark.isEmpty()) {
            errors.rejectValue("hoursMark", "target.mark.choose");
        }
        if (!SourceText.isLine(form.hoursSource())) {
            errors.rejectValue("hoursSource", "target.source.needed", new Object[] {SourceText.LONGEST}, null);
            return Optional.empty();
        }
        return mark.filter(chosen -> hours.size() == Photoperiod.MONTHS)
                .map(chosen -> new Photoperiod(hours, chosen, form.hoursSource().strip()));
    }

    private Optional<Double> hour(int month) {
        Optional<Double> read = DecimalText.read(form.hour(month))
                .filter(hours -> hours.signum() >= 0 && hours.compareTo(DAY) <= 0)
                .filter(hours -> hours.stripTrailingZeros().scale() <= 2)
                .map(BigDecimal::doubleValue);
        if (read.isEmpty()) {
            errors.rejectValue("hours[" + month + "]", "target.hours.wrong");
        }
        return read;
    }
}
