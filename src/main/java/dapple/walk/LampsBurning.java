package dapple.walk;

import dapple.lamp.LampModelFacts;
import dapple.light.dose.KeeperDose.Hazard;
import dapple.light.dose.Span;
import dapple.light.quantity.Quantity;
import dapple.rig.FittingFacts;
import dapple.rig.LampTimer;
import dapple.rig.Rig;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When the lamps of an enclosure burn around the day of a walk, and what their light does to people.
 *
 * @param rig empty: none is on record
 * @param hazards of lamps with a spectrum, by lamp model
 */
record LampsBurning(Optional<Rig> rig, LocalDate day, ZoneId zone, Map<Long, Hazard> hazards) {

    Hazard hazard() {
        return hazard(fittings().map(fitting -> fitting.lamp().model()).toList(), hazards);
    }

    /** Of the worst of the ultraviolet lamps; where none is on record the rule of thumb, since some lamp is read. */
    static Hazard hazard(List<LampModelFacts> models, Map<Long, Hazard> hazards) {
        List<Hazard> found = models.stream()
                .filter(model -> model.lampClass().emitsUltraviolet())
                .map(model -> hazards.getOrDefault(model.id(), Hazard.WITHOUT_SPECTRUM))
                .toList();
        List<Hazard> counted = found.isEmpty() ? List.of(Hazard.WITHOUT_SPECTRUM) : found;
        return new Hazard(
                counted.stream()
                        .mapToDouble(Hazard::actinicPerUvIndexMinute)
                        .max()
                        .orElseThrow(),
                counted.stream().mapToDouble(Hazard::uvaPerUvIndexMinute).max().orElseThrow(),
                counted.stream().anyMatch(Hazard::isAssumed));
    }

    /** Those whose timer is known; of the others nothing is said. */
    List<Sheet.Lamp> lamps() {
        return fittings()
                .flatMap(fitting -> fitting.hanging().timer().map(timer -> lamp(fitting, timer)).stream())
                .toList();
    }

    private Stream<FittingFacts> fittings() {
        return rig.stream().flatMap(found -> found.fittings().stream());
    }

    private Sheet.Lamp lamp(FittingFacts fitting, LampTimer timer) {
        return new Sheet.Lamp(
                fitting.lamp().tag(),
                Arrays.stream(Quantity.values())
                        .filter(quantity -> fitting.lamp().model().lampClass().gives(quantity))
                        .toList(),
                lit(fitting, timer));
    }

    /** From the day before until the day after, times that meet made one. */
    private List<Sheet.Lit> lit(FittingFacts fitting, LampTimer timer) {
        Span hung = new Span(fitting.span().from(), fitting.span().to().orElse(Instant.MAX));
        List<Span> spans = new ArrayList<>();
        for (LocalDate date = day.minusDays(1); !date.isAfter(day.plusDays(1)); date = date.plusDays(1)) {
            timer.lit(date, zone).flatMap(span -> span.meet(hung)).ifPresent(span -> join(spans, span));
        }
        return spans.stream().map(span -> new Sheet.Lit(span.from(), span.to())).toList();
    }

    private static void join(List<Span> spans, Span next) {
        int last = spans.size() - 1;
        if (last >= 0 && !next.from().isAfter(spans.get(last).to())) {
            spans.set(last, new Span(spans.get(last).from(), next.to()));
        } else {
            spans.add(next);
        }
    }
}
