package dapple.light.dose;

import dapple.light.judging.PointRole;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What light was available to an animal, day by day. Lowest dose: UV index in shade × lit time; highest: at the basking
 * place × lit time; best: at the basking place × the assumed time there, and in the gradient (the mean of basking and
 * shade where that is not known) × the rest of the lit time. Only ultraviolet lamps on timers are counted, no daylight.
 */
public final class LightHistory {
    private static final UvIndexOfDay UNKNOWN = new UvIndexOfDay.Unknown();

    private final LightRecord known;
    private final DoseSettings settings;
    private final Map<Spell, ReadDays> spells = new LinkedHashMap<>();

    public LightHistory(LightRecord known, DoseSettings settings) {
        this.known = known;
        this.settings = settings;
        known.spells().forEach(spell -> spells.put(spell, new ReadDays(known.during(spell), known.zone())));
    }

    /** The days from the first until before the last. */
    public List<DayOfLight> days(LocalDate from, LocalDate until) {
        return from.datesUntil(until).map(this::on).toList();
    }

    public DayOfLight on(LocalDate date) {
        Span day = Span.of(date, known.zone());
        List<DayPart> parts = new ArrayList<>();
        Instant reached = day.from();
        for (Map.Entry<Spell, ReadDays> spell : spells.entrySet()) {
            Optional<Span> here = spell.getKey().during().meet(day);
            if (here.isPresent()) {
                nowhere(reached, here.get().from()).ifPresent(parts::add);
                parts.add(part(spell.getKey().circumstance(), spell.getValue(), here.get(), date));
                reached = here.get().to();
            }
        }
        nowhere(reached, day.to()).ifPresent(parts::add);
        return DayOfLight.of(date, parts, settings.basking());
    }

    private DayPart part(Circumstance circumstance, ReadDays read, Span during, LocalDate date) {
        return switch (circumstance) {
            case UNDER_LAMPS -> underLamps(read, during, date);
            case PLANNED_OFF -> without(during, circumstance, DayJudgement.PLANNED_OFF, Optional.of(Duration.ZERO));
            case NOWHERE -> without(during, circumstance, DayJudgement.UNKNOWN, Optional.empty());
        };
    }

    private DayPart underLamps(ReadDays read, Span during, LocalDate date) {
        int carryDays = settings.carryDays();
        return new DayPart(
                during,
                Circumstance.UNDER_LAMPS,
                read.index(PointRole.BASKING, date, carryDays),
                read.index(PointRole.GRADIENT, date, carryDays),
                read.index(PointRole.SHADE, date, carryDays),
                read.judgement(date, carryDays),
                known.lamps().lit(during, known.zone()));
    }

    private static Optional<DayPart> nowhere(Instant from, Instant to) {
        return from.isBefore(to)
                ? Optional.of(without(new Span(from, to), Circumstance.NOWHERE, DayJudgement.UNKNOWN, Optional.empty()))
                : Optional.empty();
    }

    private static DayPart without(
            Span during, Circumstance circumstance, DayJudgement judgement, Optional<Duration> lit) {
        return new DayPart(during, circumstance, UNKNOWN, UNKNOWN, UNKNOWN, judgement, lit);
    }
}
