package dapple.overview;

import dapple.animal.AnimalFacts;
import dapple.animal.Resident;
import dapple.commissioning.AcceptanceOnRecord;
import dapple.enclosure.PlannedOffOnRecord;
import dapple.order.OrderFacts;
import dapple.reading.ReadingOnRecord;
import dapple.reading.Sentences;
import dapple.review.AlarmOnRecord;
import dapple.review.DecisionFacts;
import dapple.rig.Rig;
import dapple.rig.Span;
import dapple.species.SpeciesFacts;
import dapple.target.Target;
import dapple.target.VersionDetails;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;

/**
 * Takes an audit apart into lines, in the order of its page.
 *
 * @param names of people, by id
 * @param species by id
 */
record AuditLines(
        MessageSource messages, Sentences sentences, Map<Long, String> names, Map<Long, SpeciesFacts> species) {

    List<AuditLine> of(AuditSheet sheet) {
        return Stream.of(
                        rig(sheet.rig().rig(), true),
                        rig(sheet.rig().saidThen(), false),
                        each(sheet.accepted().stream().toList(), this::acceptance),
                        each(sheet.residents(), one -> resident(one, true)),
                        each(sheet.saidThen(), one -> resident(one, false)),
                        sheet.targets().values().stream().flatMap(this::target),
                        each(sheet.orders().values(), order -> order(order, sheet)),
                        each(sheet.plannedOff(), this::plannedOff),
                        each(sheet.readings(), this::reading),
                        each(sheet.decisions(), this::decision),
                        each(sheet.alarms(), this::alarm))
                .flatMap(Function.identity())
                .toList();
    }

    private static <T> Stream<AuditLine> each(Collection<T> some, Function<T, AuditLine> line) {
        return some.stream().map(line);
    }

    private Stream<AuditLine> rig(Rig rig, boolean holds) {
        Stream<AuditLine> lamps = rig.fittings().stream()
                .map(one -> begun(
                                AuditKind.LAMP, one.lamp().tag(), one.hanging().place(), one.span())
                        .saying(one.lamp().model().name()));
        Stream<AuditLine> covers = rig.covers().stream()
                .map(one -> begun(AuditKind.COVER, one.cover().name(), "", one.span()));
        Stream<AuditLine> furniture = rig.furniture().stream()
                .map(one -> begun(AuditKind.FURNITURE, one.furniture().name(), "", one.span()));
        return Stream.of(lamps, covers, furniture).flatMap(Function.identity()).map(line -> line.holding(holds));
    }

    private AuditLine begun(AuditKind kind, String what, String where, Span span) {
        return AuditLine.of(kind, what, where)
                .over(span.from(), span.to())
                .recorded(span.begunRecordedAt(), name(span.begunBy()));
    }

    private AuditLine acceptance(AcceptanceOnRecord one) {
        return AuditLine.of(AuditKind.ACCEPTANCE, "", "")
                .saying(one.reason())
                .over(one.acceptedAt(), Optional.empty())
                .recorded(one.acceptedAt(), one.acceptedBy());
    }

    private AuditLine resident(Resident one, boolean holds) {
        AnimalFacts animal = one.animal();
        return AuditLine.of(AuditKind.RESIDENT, animal.nameAndNumber(), "")
                .saying(scientific(animal.speciesId()))
                .counting(one.count())
                .over(one.stay().stay().from(), one.stay().stay().to())
                .recorded(one.stay().recordedAt(), name(one.stay().personId()))
                .holding(holds);
    }

    private Stream<AuditLine> target(VersionDetails version) {
        return version.target().sourcedLimits().stream()
                .map(limit -> AuditLine.of(
                                AuditKind.TARGET,
                                scientific(version.target().speciesId()),
                                word("place.", limit.place()))
                        .saying(word("quantity.", limit.quantity()) + ": " + sentences.limit(limit))
                        .recorded(version.target().approvedAt(), name(version.approvedBy())))
                .map(line -> begun(line, version.target()));
    }

    /** One that counts for all earlier readings has no begin. */
    private static AuditLine begun(AuditLine line, Target target) {
        return target.isForEarlierReadings() ? line : line.over(target.inForceFrom(), Optional.empty());
    }

    private AuditLine order(OrderFacts order, AuditSheet sheet) {
        String animal = Stream.concat(sheet.residents().stream(), sheet.saidThen().stream())
                .map(Resident::animal)
                .filter(one -> one.id() == order.animalId())
                .map(AnimalFacts::nameAndNumber)
                .findFirst()
                .orElse("");
        return AuditLine.of(AuditKind.VETS_ORDER, animal, "")
                .saying(word("order-kind.", order.ordered().kind()) + ": " + order.reason())
                .over(order.from(), Optional.of(order.to()))
                .recorded(order.recordedAt(), name(order.personId()));
    }

    private AuditLine plannedOff(PlannedOffOnRecord off) {
        return AuditLine.of(AuditKind.PLANNED_OFF, "", "")
                .saying(off.time().reason())
                .over(off.time().from(), off.time().to())
                .recorded(off.recordedAt(), name(off.recordedBy()))
                .holding(off.calledOffAt().isEmpty());
    }

    private AuditLine reading(ReadingOnRecord line) {
        return AuditLine.of(AuditKind.READING, line.point().code(), line.point().place())
                .over(line.reading().takenAt(), Optional.empty())
                .recorded(line.reading().recordedAt(), name(line.reading().recordedBy()))
                .holding(line.reading().isStanding())
                .read(line);
    }

    private AuditLine decision(DecisionFacts decision) {
        return AuditLine.of(AuditKind.DECISION, word("decision.kind.", decision.kind()), "")
                .saying(decision.text())
                .over(decision.madeAt(), decision.until())
                .recorded(decision.madeAt(), name(decision.madeBy()));
    }

    private AuditLine alarm(AlarmOnRecord alarm) {
        return AuditLine.of(AuditKind.ALARM, alarm.point(), alarm.place()).over(alarm.raisedAt(), alarm.seenAt());
    }

    private String scientific(long speciesId) {
        return Optional.ofNullable(species.get(speciesId))
                .map(SpeciesFacts::scientificName)
                .orElse("");
    }

    private String name(long personId) {
        return names.getOrDefault(personId, "");
    }

    private String word(String prefix, Enum<?> named) {
        return messages.getMessage(prefix + named.name(), null, Locale.UK);
    }
}
