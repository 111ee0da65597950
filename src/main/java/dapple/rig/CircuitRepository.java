package dapple.rig;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface CircuitRepository extends JpaRepository<Circuit, Long> {
    @Query("select c from Circuit c where c.siteId = :siteId order by lower(c.name), c.id")
    List<Circuit> all(long siteId);

    @Query("select c from Circuit c where c.siteId = :siteId and c.id = :id")
    Optional<Circuit> findAtSite(long siteId, long id);

    @Query("select count(c) > 0 from Circuit c where c.siteId = :siteId and lower(c.name) = lower(:name)")
    boolean isTaken(long siteId, String name);
}
