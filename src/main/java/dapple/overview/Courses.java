package dapple.overview;

import dapple.drawing.StripEvent;
import dapple.drawing.StripHistory;
import dapple.drawing.StripReading;
import dapple.drawing.StripSize;
import dapple.drawing.StripTarget;
import dapple.enclosure.PointFacts;
import dapple.light.judging.Limits;
import dapple.light.judging.State;
import dapple.light.quantity.Quantity;
import dapple.order.OrderFacts;
import dapple.people.SignedIn;
import dapple.reading.JudgedReading;
import dapple.reading.Readings;
import dapple.rig.RigChangeFacts;
import dapple.rig.Rigs;
import dapple.site.Formats;
import dapple.target.Target;
import dapple.target.Targets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Gathers what time strips of enclosures are drawn of. */
@Component
class Courses {
    /** A line may come from before the drawing. */
    private static final int WEEKS_BEFORE = 3;

    private final Readings readings;
    private final Targets targets;
    private final Rigs rigs;
    private final Formats formats;
    private final MessageSource messages;

    Courses(Readings readings, Targets targets, Rigs rigs, Formats formats, MessageSource messages) {
        this.readings = readings;
        this.targets = targets;
        this.rigs = rigs;
        this.formats = formats;
        this.messages = messages;
    }

    /**
     * The course of the UV index at a point, held against what one species needed.
     *
     * @param alone empty: several of the species live there, and the orders for one say nothing of the others
     */
    Course of(SignedIn me, PointFacts point, Optional<Long> speciesId, Optional<Alone> alone, LocalDate lastDay) {
        Instant from = lastDay.minusWeeks(StripSize.LONG.weeks() + WEEKS_BEFORE)
                .atStartOfDay(me.zone())
                .toInstant();
        List<RigChangeFacts> changes = rigs.changes(me.siteId(), point.enclosureId(), 0).stream()
                .filter(change -> !change.at().isBefore(from))
                .toList();
        StripHistory history = new StripHistory(
                Quantity.UV_INDEX,
                me.zone(),
                readings(me, point, speciesId, from),
                bands(me, point, speciesId, alone),
                changes.stream()
                        .map(change -> new StripEvent(change.at(), event(me, change)))
                        .toList());
        return new Course(history, changes);
    }

    /**
     * The only animal of its species.
     *
     * @param since when it moved in
     * @param orders for it, whenever they held
     */
    record Alone(Instant since, List<OrderFacts> orders) {
        Alone {
            orders = List.copyOf(orders);
        }
    }

    /** One for each reading: its verdict for the species if it has one, else its first. */
    private List<StripReading> readings(SignedIn me, PointFacts point, Optional<Long> speciesId, Instant from) {
        Map<Long, JudgedReading> found = new TreeMap<>();
        for (JudgedReading one : readings.since(me.siteId(), point, Quantity.UV_INDEX, from)) {
            found.merge(one.readingId(), one, (first, next) -> next.speciesId().equals(speciesId) ? next : first);
        }
        return found.values().stream().map(one -> reading(me, one)).toList();
    }

    private StripReading reading(SignedIn me, JudgedReading one) {
        State state = one.state().orElse(State.NO_TARGET);
        String words = say(
                "course.reading",
                formats.day(one.takenAt(), me.zone()),
                formats.uvi(one.amount()),
                formats.interval(one.interval()),
                say("state." + state));
        return new StripReading(one.takenAt(), one.measured(), state, words);
    }

    /** The versions of the target, and the orders that stood in their place. */
    private List<StripTarget> bands(SignedIn me, PointFacts point, Optional<Long> speciesId, Optional<Alone> alone) {
        List<Held> held = speciesId.map(species -> targets(me, species)).orElse(List.of());
        for (OrderFacts order : alone.map(Alone::orders).orElse(List.of())) {
            held = Held.under(order, alone.orElseThrow().since(), held, say("course.under-order"));
        }
        return held.stream().map(one -> one.at(point.role())).toList();
    }

    /** Each version until the next one's approval. */
    private List<Held> targets(SignedIn me, long speciesId) {
        List<Held> found = new ArrayList<>();
        Instant until = Instant.MAX;
        for (Target target : targets.courseOf(me.siteId(), speciesId)) {
            Optional<Limits> limits = target.limits(Quantity.UV_INDEX);
            if (limits.isPresent()) {
                found.add(new Held(target.inForceFrom(), until, limits.get(), say("course.target", target.number())));
            }
            until = target.inForceFrom();
        }
        return found;
    }

    private String event(SignedIn me, RigChangeFacts change) {
        return say("course.event", say("rig-change." + change.kind()), formats.day(change.at(), me.zone()));
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}
