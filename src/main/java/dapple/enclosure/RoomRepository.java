package dapple.enclosure;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RoomRepository extends JpaRepository<Room, Long> {
    @Query("select r from Room r where r.siteId = :siteId and r.id = :id")
    Optional<Room> findAtSite(long siteId, long id);

    @Query("select r from Room r where r.siteId = :siteId order by r.walkingOrder, r.id")
    List<Room> inWalkingOrder(long siteId);

    @Query(
            "select count(r) > 0 from Room r where r.siteId = :siteId and lower(r.name) = lower(:name) and r.id <> :except")
    boolean isTaken(long siteId, String name, long except);
}
