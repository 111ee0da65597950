package dapple.people;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface PersonRepository extends JpaRepository<Person, Long> {
    @Query("select distinct p from Person p left join fetch p.memberships where p.signInName = :signInName")
    Optional<Person> findBySignInName(String signInName);

    @Query("select distinct p from Person p left join fetch p.memberships where p.id = :id")
    Optional<Person> findWithMemberships(long id);

    @Query("""
            select p from Person p
            where exists (select 1 from Membership m where m.person = p and m.siteId = :siteId) and p.id = :id""")
    Optional<Person> findAtSite(long siteId, long id);

    @Query("""
            select distinct p from Person p join fetch p.memberships
            where exists (select 1 from Membership m where m.person = p and m.siteId = :siteId)""")
    List<Person> findAllAtSite(long siteId);
}
