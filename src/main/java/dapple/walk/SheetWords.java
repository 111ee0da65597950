package dapple.walk;

import dapple.animal.Housed;
import dapple.enclosure.Facing;
import dapple.enclosure.PointFacts;
import dapple.expectation.Expectations.Place;
import dapple.light.quantity.Quantity;
import dapple.meter.CalibrationFactors;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.people.SignedIn;
import dapple.practice.MeterNotice;
import dapple.reading.Sentences;
import dapple.rig.Rig;
import dapple.round.PlanFacts;
import dapple.site.Formats;
import dapple.walk.Sheet.Choice;
import dapple.walk.Sheet.Range;
import dapple.walk.StopNow.Asked;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Writes what is known of a walk as the sheet that a phone carries, with every text on it. */
@Component
class SheetWords {
    private final MessageSource messages;
    private final Formats formats;
    private final Sentences sentences;
    private final Clock clock;

    SheetWords(MessageSource messages, Formats formats, Sentences sentences, Clock clock) {
        this.messages = messages;
        this.formats = formats;
        this.sentences = sentences;
        this.clock = clock;
    }

    /**
     * The sheet of a walk.
     *
     * @param plan at most one round
     */
    Sheet sheet(SignedIn me, List<Sheet.Plan> plan, List<StopNow> stops, Known known) {
        return new Sheet(
                new Sheet.Person(me.personId(), me.fullName()),
                clock.instant(),
                me.settings().warmUpMinutes(),
                plan.stream().findFirst(),
                stops.stream().map(stop -> stop(me, stop, known)).toList(),
                known.meters().stream().map(meter -> meter(meter, known)).toList());
    }

    private Sheet.Stop stop(SignedIn me, StopNow stop, Known known) {
        long enclosureId = stop.enclosure().id();
        Optional<Rig> rig = Optional.ofNullable(known.rigs().get(enclosureId));
        LampsBurning lamps =
                new LampsBurning(rig, LocalDate.ofInstant(clock.instant(), me.zone()), me.zone(), known.hazards());
        return new Sheet.Stop(
                enclosureId,
                stop.enclosure().code(),
                stop.enclosure().room(),
                Optional.ofNullable(known.doors().get(enclosureId))
                        .map(door -> door.code().text()),
                known.residents().getOrDefault(enclosureId, List.of()).stream()
                        .map((Housed one) -> one.species().scientificName())
                        .distinct()
                        .toList(),
                stop.visitKey(),
                Sheet.Hazard.of(lamps.hazard()),
                lamps.lamps(),
                stop.asked().stream().map(asked -> step(me, stop, asked, known)).toList());
    }

    private Sheet.Step step(SignedIn me, StopNow stop, Asked asked, Known known) {
        PointFacts point = asked.point();
        Quantity quantity = asked.quantity();
        Place place = new Place(point.id(), quantity);
        return new Sheet.Step(
                point.id(),
                point.code(),
                point.code() + " " + say("role-of-point." + point.role()),
                where(point, quantity),
                quantity,
                quantity == Quantity.UV_INDEX ? "" : sentences.quantity(quantity),
                quantity.unit(),
                quantity.mayBeNegative(),
                quantity.lowest(),
                quantity.highest(),
                otherwise(point, quantity),
                quantity != Quantity.UV_INDEX,
                Optional.ofNullable(known.lastRead().get(place))
                        .map(at -> say("visit.last-read", formats.day(at, me.zone())))
                        .orElseGet(() -> say("visit.never-read")),
                stop.done().contains(asked),
                Optional.ofNullable(known.expected().get(place))
                        .map(found ->
                                new Range(found.range().low(), found.range().high())),
                ceiling(known, point, quantity),
                me.settings().repeatsAsked().at(point.role(), quantity));
    }

    private String where(PointFacts point, Quantity quantity) {
        return quantity.isTemperature() ? point.place() : point.place() + ", " + say("facing." + point.facing());
    }

    private List<Choice> otherwise(PointFacts point, Quantity quantity) {
        return quantity.isTemperature()
                ? List.of()
                : Arrays.stream(Facing.values())
                        .filter(facing -> facing != point.facing())
                        .map(facing -> new Choice(facing.name(), say("facing." + facing)))
                        .toList();
    }

    private static Optional<Double> ceiling(Known known, PointFacts point, Quantity quantity) {
        return Optional.ofNullable(known.limits().get(point.enclosureId()))
                .flatMap(limits -> limits.ceiling(quantity, point));
    }

    private Sheet.Meter meter(MeterFacts meter, Known known) {
        CalibrationFactors factors = Optional.ofNullable(known.calibrations().get(meter.id()))
                .map(CalibrationInForce::factors)
                .orElse(CalibrationFactors.of(1));
        return new Sheet.Meter(
                meter.id(),
                meter.code() + ", " + meter.description(),
                meter.quantity(),
                meter.uncertainty().resolution(),
                factors.ranges().stream()
                        .map(range ->
                                new Sheet.Factor(Optional.of(range.upTo()).filter(Double::isFinite), range.factor()))
                        .toList(),
                meter.range().map(range -> new Range(range.low(), range.high())),
                known.standing().notices(meter).stream().map(this::words).toList());
    }

    private String words(MeterNotice notice) {
        return notice.day()
                .map(day -> say(notice.key(), formats.day(day), notice.percent().orElse(0)))
                .orElseGet(() -> say(notice.key()));
    }

    static Sheet.Plan plan(PlanFacts plan, LocalDate dueOn) {
        return new Sheet.Plan(plan.id(), plan.title(), dueOn);
    }

    private String say(String key, Object... arguments) {
        return messages.getMessage(key, arguments, Locale.UK);
    }
}
