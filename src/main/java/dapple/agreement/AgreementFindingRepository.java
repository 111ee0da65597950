package dapple.agreement;

import dapple.light.quantity.Quantity;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface AgreementFindingRepository extends Repository<AgreementFinding, Long> {
    AgreementFinding saveAndFlush(AgreementFinding finding);

    /** Locked until the end of the transaction, like the next two. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select f from AgreementFinding f where f.siteId = :siteId and f.quantity = :quantity order by f.id")
    List<AgreementFinding> lockAll(long siteId, Quantity quantity);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("""
            select f from AgreementFinding f where f.siteId = :siteId and f.meterId = :meterId and f.openKey is not null
            order by f.id""")
    List<AgreementFinding> lockOpen(long siteId, long meterId);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    @Query("select f from AgreementFinding f where f.siteId = :siteId and f.id = :id")
    Optional<AgreementFinding> lockAtSite(long siteId, long id);

    @Query("select f from AgreementFinding f left join fetch f.doubts where f.siteId = :siteId and f.id = :id")
    Optional<AgreementFinding> findAtSite(long siteId, long id);

    @Query("""
            select distinct f from AgreementFinding f left join fetch f.doubts
            where f.siteId = :siteId and f.openKey is not null order by f.toldAt, f.id""")
    List<AgreementFinding> open(long siteId);

    /** Newest first. */
    @Query("""
            select distinct f from AgreementFinding f left join fetch f.doubts
            where f.siteId = :siteId order by f.toldAt desc, f.id desc""")
    List<AgreementFinding> all(long siteId);
}
