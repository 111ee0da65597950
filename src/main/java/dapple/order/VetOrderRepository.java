package dapple.order;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface VetOrderRepository extends JpaRepository<VetOrder, Long> {
    String RESIDENTS = """
            select new dapple.order.Resident(new dapple.animal.Housed(
            s.enclosureId, s.fromAt, a, p.id, p.scientificName, p.commonName, p.version), o)
            from Stay s join s.animal a join Species p on p.id = a.speciesId left join VetOrder o on o.animalId = a.id
            and o.fromAt <= :at and o.toAt > :at
            where s.siteId = :siteId and s.withdrawnAt is null and s.fromAt <= :at and (s.toAt is null or s.toAt > :at)
            """;

    @Query(RESIDENTS + "order by a.id, o.id")
    List<Resident> residents(long siteId, Instant at);

    @Query(RESIDENTS + "and s.enclosureId = :enclosureId order by a.id, o.id")
    List<Resident> residents(long siteId, long enclosureId, Instant at);

    @Query("""
            select o from VetOrder o where o.siteId = :siteId and o.animalId in :animalIds
            and o.fromAt <= :at and o.toAt > :at order by o.id""")
    List<VetOrder> inForce(long siteId, Collection<Long> animalIds, Instant at);

    @Query("""
            select o from VetOrder o where o.siteId = :siteId and o.animalId = :animalId
            and o.toAt > :at and o.fromAt < o.toAt order by o.fromAt, o.id""")
    List<VetOrder> openAt(long siteId, long animalId, Instant at);

    @Query("""
            select o from VetOrder o where o.siteId = :siteId and o.animalId = :animalId
            order by o.fromAt desc, o.id desc""")
    List<VetOrder> ofAnimal(long siteId, long animalId);

    @Query("""
            select o from VetOrder o where o.siteId = :siteId and o.animalId in :animalIds
            order by o.fromAt desc, o.id desc""")
    List<VetOrder> ofAnimals(long siteId, Collection<Long> animalIds);

    @Query("select o from VetOrder o where o.siteId = :siteId and o.animalId = :animalId and o.id = :id")
    Optional<VetOrder> findOfAnimal(long siteId, long animalId, long id);

    @Query("select o from VetOrder o where o.siteId = :siteId and o.id in :ids")
    List<VetOrder> findAllAtSite(long siteId, Collection<Long> ids);

    Optional<VetOrder> findByEntryKey(UUID entryKey);

    @Query("""
            select o.fromAt from VetOrder o where o.siteId = :siteId
            union select o.toAt from VetOrder o where o.siteId = :siteId""")
    List<Instant> turns(long siteId);
}
