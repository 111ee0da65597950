package dapple.enclosure;

import dapple.site.NotFoundException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Rooms, enclosures and their measuring points. */
@Service
public class Enclosures {
    private final RoomRepository rooms;
    private final EnclosureRepository enclosures;
    private final MeasuringPointRepository points;
    private final PlannedOffRepository plannedOff;
    private final PlanningOff planningOff;
    private final ApplicationEventPublisher events;

    Enclosures(
            RoomRepository rooms,
            EnclosureRepository enclosures,
            MeasuringPointRepository points,
            PlannedOffRepository plannedOff,
            PlanningOff planningOff,
            ApplicationEventPublisher events) {
        this.rooms = rooms;
        this.enclosures = enclosures;
        this.points = points;
        this.plannedOff = plannedOff;
        this.planningOff = planningOff;
        this.events = events;
    }

    /** Adds a room, walked after those with a smaller number. */
    @Transactional
    public long addRoom(long siteId, String name, int walkingOrder) {
        return rooms.save(new Room(siteId, name, walkingOrder)).id();
    }

    @Transactional
    public long add(long siteId, long roomId, String code, int walkingOrder, Optional<InnerSize> size) {
        return add(siteId, new EnclosureChange(roomId, code, walkingOrder, size));
    }

    @Transactional
    public long add(long siteId, EnclosureChange added) {
        Room room = rooms.findAtSite(siteId, added.roomId()).orElseThrow(NotFoundException::new);
        return enclosures.save(new Enclosure(siteId, room, added)).id();
    }

    @Transactional
    public PointFacts addPoint(long siteId, long enclosureId, NewPoint point) {
        get(siteId, enclosureId);
        int last = points.inUse(siteId, enclosureId).size();
        return points.save(new MeasuringPoint(siteId, enclosureId, point, last)).facts();
    }

    /** Says that the lamps of an enclosure are off on purpose. */
    @Transactional
    public void planOff(long siteId, PlannedOffTime time, long personId) {
        planningOff.plan(siteId, time, personId);
    }

    /** The enclosures in use. */
    @Transactional(readOnly = true)
    public List<EnclosureFacts> inWalkingOrder(long siteId) {
        return enclosures.inUse(siteId);
    }

    /** The enclosures in use in walking order, with their points, and those whose lamps are off on purpose marked. */
    @Transactional(readOnly = true)
    public List<EnclosureToday> inUseAt(long siteId, Instant at) {
        return EnclosureToday.of(enclosures.inUseAt(siteId, at));
    }

    /** The same of one enclosure, in use or retired. */
    @Transactional(readOnly = true)
    public EnclosureToday at(long siteId, long enclosureId, Instant at) {
        return EnclosureToday.of(enclosures.at(siteId, enclosureId, at)).stream()
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    /** The enclosures that a site has or had, in walking order. */
    @Transactional(readOnly = true)
    public List<EnclosureFacts> all(long siteId) {
        return enclosures.all(siteId);
    }

    @Transactional(readOnly = true)
    public EnclosureFacts get(long siteId, long enclosureId) {
        return enclosures.findFacts(siteId, enclosureId).orElseThrow(NotFoundException::new);
    }

    /** The place in the walk of the last enclosure of a room, in use or not; 0 where there is none. */
    @Transactional(readOnly = true)
    public int lastInRoom(long siteId, long roomId) {
        return enclosures.lastInRoom(siteId, roomId).orElse(0);
    }

    /** Holds an enclosure for the rest of the transaction, so that what hangs and stands there changes one at a time. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lock(long siteId, long enclosureId) {
        if (enclosures.lockAtSite(siteId, enclosureId).isEmpty()) {
            throw new NotFoundException();
        }
    }

    /** The rooms of a site in walking order. */
    @Transactional(readOnly = true)
    public List<RoomFacts> rooms(long siteId) {
        return rooms.inWalkingOrder(siteId).stream().map(Room::facts).toList();
    }

    @Transactional(readOnly = true)
    public RoomFacts room(long siteId, long roomId) {
        return rooms.findAtSite(siteId, roomId).map(Room::facts).orElseThrow(NotFoundException::new);
    }

    @Transactional(readOnly = true)
    public List<PointFacts> pointsOf(long siteId, long enclosureId) {
        return points.inUse(siteId, enclosureId).stream()
                .map(MeasuringPoint::facts)
                .toList();
    }

    /** The points that an enclosure has or had, in walking order. */
    @Transactional(readOnly = true)
    public List<PointFacts> everyPointOf(long siteId, long enclosureId) {
        return points.ofEnclosure(siteId, enclosureId).stream()
                .map(MeasuringPoint::facts)
                .toList();
    }

    /** The points in use, by enclosure. */
    @Transactional(readOnly = true)
    public Map<Long, List<PointFacts>> pointsByEnclosure(long siteId) {
        return points.inUseAtSite(siteId).stream()
                .map(MeasuringPoint::facts)
                .collect(Collectors.groupingBy(PointFacts::enclosureId));
    }

    /** All points that a site has or had, by id. */
    @Transactional(readOnly = true)
    public Map<Long, PointFacts> pointsById(long siteId) {
        return points.all(siteId).stream()
                .map(MeasuringPoint::facts)
                .collect(Collectors.toMap(PointFacts::id, point -> point));
    }

    /** A point, in use or retired. */
    @Transactional(readOnly = true)
    public PointFacts point(long siteId, long pointId) {
        return points.findAtSite(siteId, pointId).map(MeasuringPoint::facts).orElseThrow(NotFoundException::new);
    }

    /** Says which species and animals of the site a point serves; what was read there is judged by that too. */
    @Transactional
    public void serve(long siteId, long pointId, Served served) {
        MeasuringPoint point = points.findAtSite(siteId, pointId).orElseThrow(NotFoundException::new);
        point.serve(served);
        events.publishEvent(new PointServesChanged(siteId, point.facts().enclosureId()));
    }

    /** Whether the lamps of an enclosure are off on purpose at an instant. */
    @Transactional(readOnly = true)
    public boolean isPlannedOff(long siteId, long enclosureId, Instant at) {
        return plannedOff.isOff(siteId, enclosureId, at);
    }

    /** When lamps went off on purpose or came on again. */
    @Transactional(readOnly = true)
    public List<Instant> turns(long siteId, long enclosureId) {
        return plannedOff.turns(siteId, enclosureId);
    }

    /** When the lamps of one enclosure were off on purpose at an instant, with who said so and when. */
    @Transactional(readOnly = true)
    public List<PlannedOffOnRecord> plannedOffOnRecord(long siteId, long enclosureId, Instant at) {
        return plannedOff.onRecord(siteId, enclosureId, at).stream()
                .map(PlannedOff::onRecord)
                .toList();
    }

    /** When the lamps of some enclosures were off on purpose, as far as it meets [from, to); oldest first. */
    @Transactional(readOnly = true)
    public List<PlannedOffTime> plannedOff(long siteId, Collection<Long> enclosureIds, Instant from, Instant to) {
        return enclosureIds.isEmpty()
                ? List.of()
                : plannedOff.ofEnclosures(siteId, enclosureIds, from, to).stream()
                        .map(PlannedOff::time)
                        .toList();
    }
}
