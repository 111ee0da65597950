package dapple.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

interface ApiTokenRepository extends JpaRepository<ApiToken, Long> {
    @Query("select t from ApiToken t where t.tokenHash = :hash and t.revokedAt is null")
    Optional<ApiToken> findInForce(String hash);

    @Query("""
            select new dapple.people.KeyFacts(t.id, t.name, t.createdAt, t.lastUsedAt) from ApiToken t
            where t.siteId = :siteId and t.personId = :personId and t.revokedAt is null
            order by t.createdAt desc, t.id desc""")
    List<KeyFacts> findAllInForce(long siteId, long personId);

    @Query("select t from ApiToken t where t.id = :id and t.siteId = :siteId and t.personId = :personId")
    Optional<ApiToken> findOwn(long siteId, long personId, long id);

    void deleteByPersonId(long personId);

    /** Written at most once in a while, so that a busy program does not write at each request. */
    @Modifying
    @Query("""
            update ApiToken t set t.lastUsedAt = :now
            where t.tokenHash = :hash and (t.lastUsedAt is null or t.lastUsedAt < :before)""")
    int noteUse(String hash, Instant now, Instant before);
}
