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

    @Query("""
            select count(c) > 0 from Circuit c
            where c.siteId = :siteId and lower(c.name) = lower(:name) and c.id <> :except""")
    boolean isTaken(long siteId, String name, long except);

    /** How many lamps hang on each circuit now; one that feeds none is missing. */
    @Query("""
            select new dapple.rig.CircuitRepository$Load(f.circuit.id, count(f)) from Fitting f
            where f.siteId = :siteId and f.openLampId is not null and f.circuit is not null group by f.circuit.id""")
    List<Load> loads(long siteId);

    record Load(long circuitId, long lamps) {}
}
