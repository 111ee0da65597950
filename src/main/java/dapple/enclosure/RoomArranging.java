package dapple.enclosure;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the rooms of a site and changes them. */
@Service
class RoomArranging {
    private static final long NONE = 0;

    private final RoomRepository rooms;
    private final EnclosureRepository enclosures;

    RoomArranging(RoomRepository rooms, EnclosureRepository enclosures) {
        this.rooms = rooms;
        this.enclosures = enclosures;
    }

    /** All rooms with all their enclosures, in walking order. */
    @Transactional(readOnly = true)
    public List<RoomRow> all(long siteId) {
        Map<Long, List<EnclosureFacts>> byRoom =
                enclosures.all(siteId).stream().collect(Collectors.groupingBy(EnclosureFacts::roomId));
        return rooms(siteId).stream()
                .map(room -> new RoomRow(room, byRoom.getOrDefault(room.id(), List.of())))
                .toList();
    }

    @Transactional(readOnly = true)
    public List<RoomFacts> rooms(long siteId) {
        return rooms.inWalkingOrder(siteId).stream().map(Room::facts).toList();
    }

    @Transactional(readOnly = true)
    public RoomFacts get(long siteId, long roomId) {
        return find(siteId, roomId).facts();
    }

    /**
     * Enters a room.
     *
     * @return its id
     * @throws TakenException if the site has a room of this name
     */
    @Transactional
    public long add(long siteId, RoomChange added) {
        checkIsFree(siteId, added.name(), NONE);
        return store(new Room(siteId, added.name(), added.walkingOrder()));
    }

    /**
     * Renames a room or moves it in the walk.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the room since
     * @throws TakenException if the site has another room of this name
     */
    @Transactional
    public void change(long siteId, long roomId, long version, RoomChange change) {
        Room room = find(siteId, roomId);
        if (room.facts().version() != version) {
            throw new ObjectOptimisticLockingFailureException(Room.class, roomId);
        }
        checkIsFree(siteId, change.name(), roomId);
        room.rename(change.name());
        room.moveTo(change.walkingOrder());
        store(room);
    }

    private Room find(long siteId, long roomId) {
        return rooms.findAtSite(siteId, roomId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long siteId, String name, long except) {
        if (rooms.isTaken(siteId, name, except)) {
            throw new TakenException("the site has a room of this name");
        }
    }

    /** Of two who enter one name in the same moment, the constraint of the database stops the second. */
    private long store(Room room) {
        try {
            return rooms.saveAndFlush(room).id();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a room of this name by now");
        }
    }
}
