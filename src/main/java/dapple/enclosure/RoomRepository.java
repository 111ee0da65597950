package dapple.enclosure;

import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RoomRepository extends JpaRepository<Room, Long> {
    @Query("select r from Room r where r.siteId = :siteId and r.id = :id")
    Optional<Room> findAtSite(long siteId, long id);
}
