package dapple.reading;

import dapple.enclosure.PointFacts;
import dapple.people.People;
import dapple.people.PersonFacts;
import dapple.reading.SheetRows.NewReading;
import dapple.reading.SheetRows.NewVisit;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Takes readings of past times in, however many and in whatever order: sorted into visits, stored and judged in batches by
 * what was in force when each was taken. The same place, time and meter are stored once, however often they come.
 */
@Service
public class ReadingIntake {
    private static final int READINGS_IN_MEMORY = 50_000;
    private static final int VISITS_AT_A_TIME = 250;

    private final SheetRows rows;
    private final GroundsKnown known;
    private final VisitRepository visits;
    private final Judging judging;
    private final LatestReadings latest;
    private final People people;
    private final EntityManager entities;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ReadingIntake(
            SheetRows rows,
            GroundsKnown known,
            VisitRepository visits,
            Judging judging,
            LatestReadings latest,
            People people,
            EntityManager entities,
            ApplicationEventPublisher events,
            Clock clock) {
        this.rows = rows;
        this.known = known;
        this.visits = visits;
        this.judging = judging;
        this.latest = latest;
        this.people = people;
        this.entities = entities;
        this.events = events;
        this.clock = clock;
    }

    /** What taking readings in would come to: nothing is stored. Their points and meters are of this site. */
    @Transactional(readOnly = true)
    public SheetsTaken look(long siteId, Iterator<SheetReading> readings) {
        try (SheetOrder order = sorted(readings)) {
            SheetCount count = new SheetCount();
            SheetBatches batches = new SheetBatches(order.sorted(), VISITS_AT_A_TIME);
            while (batches.hasNext()) {
                List<SheetVisit> batch = batches.next();
                OnRecord record = onRecord(batch);
                count.addVisits(batch.stream()
                        .filter(visit -> record.visit(visit.key(siteId)).isEmpty())
                        .count());
                batch.forEach(visit -> unstored(siteId, visit, record, count));
            }
            return count.taken();
        }
    }

    /**
     * Stores and judges readings in the caller's transaction. One of which another amount is on record is left out and told.
     *
     * @param by who imports them: who took those for whom the sheet names nobody that is known here
     * @throws dapple.site.NotFoundException if a point or a meter is not of this site
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public SheetsTaken take(Visitor by, Iterator<SheetReading> readings) {
        Instant now = clock.instant();
        return take(new SheetRun(by, takenAt -> now, peopleByName(by.siteId())), readings);
    }

    /** The same as if each had been recorded when it was taken: for a story, not for a sheet. */
    @Transactional(propagation = Propagation.MANDATORY)
    public SheetsTaken takeAsOfThen(Visitor by, Iterator<SheetReading> readings) {
        return take(new SheetRun(by, UnaryOperator.identity(), peopleByName(by.siteId())), readings);
    }

    private SheetsTaken take(SheetRun run, Iterator<SheetReading> readings) {
        entities.flush();
        try (SheetOrder order = sorted(readings)) {
            SheetBatches batches = new SheetBatches(order.sorted(), VISITS_AT_A_TIME);
            while (batches.hasNext()) {
                store(run, batches.next());
            }
        }
        finish(run);
        return run.count().taken();
    }

    private static SheetOrder sorted(Iterator<SheetReading> readings) {
        SheetOrder order = new SheetOrder(READINGS_IN_MEMORY);
        readings.forEachRemaining(order::add);
        return order;
    }

    private Map<String, Long> peopleByName(long siteId) {
        Map<String, Long> byName = new HashMap<>();
        for (PersonFacts person : people.at(siteId)) {
            byName.put(SheetRun.plain(person.signInName()), person.id());
            byName.put(SheetRun.plain(person.name()), person.id());
        }
        return byName;
    }

    private OnRecord onRecord(List<SheetVisit> batch) {
        SheetVisit first = batch.get(0);
        return rows.onRecord(
                first.enclosureId(), first.at(), batch.get(batch.size() - 1).at());
    }

    /** The readings of a visit that are not on record, by their keys. */
    private static Map<UUID, SheetReading> unstored(long siteId, SheetVisit visit, OnRecord record, SheetCount count) {
        Map<UUID, SheetReading> found = new LinkedHashMap<>();
        for (SheetReading said : visit.readings()) {
            UUID key = SheetVisit.key(siteId, said);
            if (count.isNew(said, key, record)) {
                found.put(key, said);
            }
        }
        return found;
    }

    private void store(SheetRun run, List<SheetVisit> batch) {
        OnRecord record = onRecord(batch);
        Map<SheetVisit, Map<UUID, SheetReading>> unstored = new LinkedHashMap<>();
        batch.forEach(visit -> {
            Map<UUID, SheetReading> found = unstored(run.siteId(), visit, record, run.count());
            if (!found.isEmpty()) {
                unstored.put(visit, found);
            }
        });
        addVisits(run, unstored.keySet(), record);
        Grounds grounds = run.grounds(batch.get(0).enclosureId(), known);
        List<NewReading> added = new ArrayList<>();
        unstored.forEach((visit, readings) -> {
            long visitId = record.visit(visit.key(run.siteId())).orElseThrow();
            readings.forEach((key, said) -> added.add(newReading(visitId, key, said, grounds)));
        });
        judge(run, record, added, grounds);
    }

    private static NewReading newReading(long visitId, UUID key, SheetReading said, Grounds grounds) {
        PointFacts point = grounds.point(said.pointId());
        return new NewReading(visitId, key, said, grounds.meter(said.meterId()).quantity(), point.facing());
    }

    private void addVisits(SheetRun run, Set<SheetVisit> unstored, OnRecord record) {
        List<NewVisit> added = unstored.stream()
                .map(visit -> newVisit(run, visit))
                .filter(visit -> record.visit(visit.key()).isEmpty())
                .toList();
        List<Long> ids = rows.addVisits(run.siteId(), added);
        for (int at = 0; at < ids.size(); at++) {
            record.addVisit(added.get(at).key(), ids.get(at));
        }
        run.count().addVisits(ids.size());
    }

    private static NewVisit newVisit(SheetRun run, SheetVisit visit) {
        Optional<Long> person = run.person(visit);
        return new NewVisit(
                visit,
                visit.key(run.siteId()),
                person.orElse(run.by().personId()),
                person.isPresent() ? null : visit.takenBy().orElse(null));
    }

    /** Visits that had been imported with other readings of a quantity are judged as a whole, all others as they come. */
    private void judge(SheetRun run, OnRecord record, List<NewReading> added, Grounds grounds) {
        List<Long> ids = rows.addReadings(run, added);
        Map<Long, List<Shown>> byVisit = new LinkedHashMap<>();
        Set<Long> grown = new LinkedHashSet<>();
        for (int at = 0; at < ids.size(); at++) {
            NewReading reading = added.get(at);
            Shown shown = shown(ids.get(at), reading);
            run.touch(shown.pointId(), shown.quantity());
            byVisit.computeIfAbsent(reading.visitId(), visit -> new ArrayList<>())
                    .add(shown);
            if (record.wasRead(reading.visitId(), reading.quantity())) {
                grown.add(reading.visitId());
            }
        }
        rows.addVerdicts(
                run,
                byVisit.entrySet().stream()
                        .filter(visit -> !grown.contains(visit.getKey()))
                        .flatMap(visit -> findings(visit.getValue(), grounds).stream())
                        .toList());
        grown.forEach(visit -> visits.lockById(visit).ifPresent(judging::judge));
        entities.clear();
    }

    private static Shown shown(long id, NewReading reading) {
        SheetReading said = reading.said();
        return new Shown(id, said.pointId(), said.meterId(), reading.quantity(), said.amount(), true, said.takenAt());
    }

    private static List<Finding> findings(List<Shown> visited, Grounds grounds) {
        List<Calibrated> calibrated = visited.stream()
                .map(shown -> Calibrated.of(shown, List.of(), grounds))
                .toList();
        return Finding.of(calibrated, grounds);
    }

    private void finish(SheetRun run) {
        run.touched().stream()
                .sorted(Read.ORDER)
                .forEach(read -> latest.refresh(read.siteId(), read.pointId(), read.quantity()));
        if (!run.touched().isEmpty()) {
            events.publishEvent(new ReadingsImported(run.siteId()));
        }
    }
}
