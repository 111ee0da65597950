package dapple.exposure;

import dapple.animal.AnimalHistory;
import dapple.animal.Animals;
import dapple.animal.Counted;
import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.order.Mates;
import dapple.order.OrderFacts;
import dapple.people.SignedIn;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What the page of an animal and its sheet show alike. */
@Component
class AnimalPage {
    private final Animals animals;
    private final Exposures exposures;
    private final ExposureStrips strips;
    private final ExposureWords words;
    private final Enclosures enclosures;
    private final Meters meters;
    private final Targets targets;
    private final Mates mates;
    private final Clock clock;

    AnimalPage(
            Animals animals,
            Exposures exposures,
            ExposureStrips strips,
            ExposureWords words,
            Enclosures enclosures,
            Meters meters,
            Targets targets,
            Mates mates,
            Clock clock) {
        this.animals = animals;
        this.exposures = exposures;
        this.strips = strips;
        this.words = words;
        this.enclosures = enclosures;
        this.meters = meters;
        this.targets = targets;
        this.mates = mates;
        this.clock = clock;
    }

    /** Puts it in the model; times as typed, none for the usual period. */
    ShownLight show(SignedIn me, long animalId, @Nullable String from, @Nullable String to, Model model) {
        AnimalHistory history = history(me, animalId);
        AskedPeriod asked = AskedPeriod.of(from, to, last(history, me));
        Exposure exposure = exposures.of(me, history, asked.period());
        Map<Long, EnclosureFacts> places =
                enclosures.all(me.siteId()).stream().collect(Collectors.toMap(EnclosureFacts::id, Function.identity()));
        List<Target> versions = targets.courseOf(me.siteId(), history.animal().speciesId());
        Map<Long, MeterFacts> meterById = meters.byId(me.siteId());
        model.addAttribute("animal", history.animal());
        model.addAttribute("history", history);
        model.addAttribute("counts", counts(me, history));
        model.addAttribute("asked", asked);
        model.addAttribute("exposure", exposure);
        model.addAttribute("words", words);
        model.addAttribute("enclosures", places);
        model.addAttribute("meters", meterById);
        model.addAttribute("species", history.species());
        model.addAttribute("targetsHeld", TargetHeld.in(asked.period(), versions, me.zone()));
        model.addAttribute("targetWords", targetWords(versions, asked.period(), me));
        order(me, history, exposure, places, model);
        return new ShownLight(exposure, meterById, versions);
    }

    AnimalHistory history(SignedIn me, long animalId) {
        return animals.historyOf(me.siteId(), animalId);
    }

    /** The light of the period that is asked for, as typed. */
    Exposure exposure(SignedIn me, AnimalHistory history, @Nullable String from, @Nullable String to) {
        return exposures.of(
                me, history, AskedPeriod.of(from, to, last(history, me)).period());
    }

    /** Of a group; an animal is one. */
    private List<Counted> counts(SignedIn me, AnimalHistory history) {
        return history.animal().isGroup()
                ? animals.countsOf(me.siteId(), history.animal().id())
                : List.of();
    }

    private void order(
            SignedIn me, AnimalHistory history, Exposure exposure, Map<Long, EnclosureFacts> places, Model model) {
        Instant now = clock.instant();
        Instant begin = exposure.period().span(me.zone()).from();
        Instant end = exposure.period().span(me.zone()).to();
        List<OrderFacts> all = exposure.lived().orders();
        List<OrderFacts> open = all.stream()
                .filter(order -> order.isOpenAt(now))
                .sorted(Comparator.comparing(OrderFacts::from))
                .toList();
        List<OrderFacts> shown = all.stream()
                .filter(order -> order.isOpenAt(now)
                        || (order.from().isBefore(end) && order.to().isAfter(begin)))
                .toList();
        model.addAttribute("orders", shown);
        model.addAttribute("open", open);
        model.addAttribute("conflicts", mates.conflicts(me.siteId(), history.animal(), open, now));
        model.addAttribute("strips", strips.of(exposure, places, shown));
    }

    /** The versions that held in the period, for the foot of the sheet. */
    private String targetWords(List<Target> versions, Period period, SignedIn me) {
        List<TargetHeld> held = TargetHeld.in(period, versions, me.zone());
        return held.isEmpty()
                ? words.say("sheet.no-target")
                : held.stream()
                        .map(one -> words.version(one.target(), me.zone()))
                        .collect(Collectors.joining(", "));
    }

    /** Today, or the day on which the record was closed. */
    private LocalDate last(AnimalHistory history, SignedIn me) {
        Instant last = history.end().map(end -> end.at()).orElseGet(clock::instant);
        return LocalDate.ofInstant(last, me.zone());
    }
}
