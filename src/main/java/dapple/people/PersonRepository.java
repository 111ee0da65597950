package dapple.people;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

interface PersonRepository extends JpaRepository<Person, Long> {
    @Query("select p from Person p where p.signInName = :signInName")
    Optional<Person> findBySignInName(String signInName);

    /** The roles of an account that is not deactivated, by site. */
    @Query("select new dapple.people.Held(p, m, s.id, s.name, s.timeZone, g.settings) "
            + "from Membership m join m.person p join Site s on s.id = m.siteId "
            + "left join SiteSettings g on g.siteId = s.id "
            + "where p.id = :id and p.deactivatedAt is null order by s.id, m.id")
    List<Held> held(long id);

    @Query("""
            select p from Person p
            where exists (select 1 from Membership m where m.person = p and m.siteId = :siteId) and p.id = :id""")
    Optional<Person> findAtSite(long siteId, long id);

    /** To be changed: raises the version even where roles or their end alone change, which are rows of their own. */
    @Lock(LockModeType.OPTIMISTIC_FORCE_INCREMENT)
    @Query("""
            select p from Person p
            where exists (select 1 from Membership m where m.person = p and m.siteId = :siteId) and p.id = :id""")
    Optional<Person> findToChange(long siteId, long id);

    @Query("select distinct p from Person p left join fetch p.memberships")
    List<Person> withMemberships();

    @Query("""
            select distinct p from Person p join fetch p.memberships
            where exists (select 1 from Membership m where m.person = p and m.siteId = :siteId)""")
    List<Person> findAllAtSite(long siteId);
}
