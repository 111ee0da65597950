package dapple.exposure;

import dapple.light.dose.DayOfLight;
import dapple.light.dose.DoseOfDay;
import dapple.light.dose.DoseOfDay.Missing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Days in a row of which the dose is not known, for one reason. */
public record Gap(Period days, Missing missing) {
    static List<Gap> in(List<DayOfLight> days) {
        List<Gap> gaps = new ArrayList<>();
        for (DayOfLight day : days) {
            Optional<Missing> missing = missing(day);
            Optional<Gap> last = gaps.isEmpty() ? Optional.empty() : Optional.of(gaps.get(gaps.size() - 1));
            if (missing.isPresent()) {
                if (last.filter(gap -> gap.goesOn(day.date(), missing.get())).isPresent()) {
                    LocalDate from = gaps.remove(gaps.size() - 1).days.from();
                    gaps.add(new Gap(new Period(from, day.date()), missing.get()));
                } else {
                    gaps.add(new Gap(new Period(day.date(), day.date()), missing.get()));
                }
            }
        }
        return gaps;
    }

    private boolean goesOn(LocalDate day, Missing why) {
        return missing == why && days.until().equals(day);
    }

    static Optional<Missing> missing(DayOfLight day) {
        return day.dose() instanceof DoseOfDay.Unknown unknown ? Optional.of(unknown.missing()) : Optional.empty();
    }
}
