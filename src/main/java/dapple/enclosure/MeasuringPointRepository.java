package dapple.enclosure;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface MeasuringPointRepository extends JpaRepository<MeasuringPoint, Long> {
    @Query("""
            select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals
            where p.siteId = :siteId and p.enclosureId = :enclosureId and p.retiredAt is null
            order by p.walkingOrder, p.id""")
    List<MeasuringPoint> inUse(long siteId, long enclosureId);

    @Query("""
            select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals
            where p.siteId = :siteId and p.retiredAt is null
            order by p.enclosureId, p.walkingOrder, p.id""")
    List<MeasuringPoint> inUseAtSite(long siteId);

    @Query(
            "select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals"
                    + " where p.siteId = :siteId")
    List<MeasuringPoint> all(long siteId);

    @Query("""
            select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals
            where p.siteId = :siteId and p.enclosureId = :enclosureId
            order by p.walkingOrder, p.id""")
    List<MeasuringPoint> ofEnclosure(long siteId, long enclosureId);

    @Query("""
            select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals
            where p.siteId = :siteId and p.enclosureId = :enclosureId and p.id = :id""")
    Optional<MeasuringPoint> findInEnclosure(long siteId, long enclosureId, long id);

    @Query("""
            select count(p) > 0 from MeasuringPoint p
            where p.enclosureId = :enclosureId and lower(p.code) = lower(:code) and p.id <> :except""")
    boolean isTaken(long enclosureId, String code, long except);

    @Query(
            "select p from MeasuringPoint p left join fetch p.quantities left join fetch p.serves left join fetch p.servesAnimals"
                    + " where p.siteId = :siteId and p.id = :id")
    Optional<MeasuringPoint> findAtSite(long siteId, long id);
}
