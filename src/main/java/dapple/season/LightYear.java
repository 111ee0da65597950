package dapple.season;

import dapple.rig.FittingFacts;
import dapple.rig.LampTimer;
import dapple.rig.LitDay;
import java.time.LocalDate;
import java.time.Year;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How long the lamps of a rig are lit on each day of a year, by their timers; those without one are not in it. */
record LightYear(Year year, List<FittingFacts> fittings) {
    LightYear {
        fittings = List.copyOf(fittings);
    }

    /**
     * Basking lamps that are lit while no other light is.
     *
     * @param minutes on the day on which it is longest
     */
    record InTheDark(LocalDate day, int minutes) {}

    boolean has(LampGroup group) {
        return !timers(group).isEmpty();
    }

    List<Double> hours(LampGroup group) {
        List<LampTimer> timers = timers(group);
        return days().stream().map(day -> LitDay.of(timers, day).hours()).toList();
    }

    /** Where there is background light at all: the day on which basking lamps are lit longest without it. */
    Optional<InTheDark> worst() {
        List<LampTimer> basking = timers(LampGroup.BASKING);
        List<LampTimer> background = timers(LampGroup.BACKGROUND);
        return days().stream()
                .map(day -> new InTheDark(day, LitDay.of(basking, day).minutesOutside(LitDay.of(background, day))))
                .filter(found -> found.minutes() > 0 && !background.isEmpty())
                .max(Comparator.comparingInt(InTheDark::minutes));
    }

    private List<LocalDate> days() {
        return IntStream.rangeClosed(1, year.length()).mapToObj(year::atDay).toList();
    }

    private List<LampTimer> timers(LampGroup group) {
        return fittings.stream()
                .filter(fitting -> group.has(fitting.lamp().model().lampClass()))
                .flatMap(fitting -> fitting.hanging().timer().stream())
                .toList();
    }
}
