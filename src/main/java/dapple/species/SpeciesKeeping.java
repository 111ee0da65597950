package dapple.species;

import dapple.site.NotFoundException;
import dapple.site.TakenException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Enters the species of a site, renames them, and tells what they were called. */
@Service
public class SpeciesKeeping {
    private static final long NONE = 0;
    private static final String NAMES =
            "select h.scientific_name, h.common_name, r.at, r.person_id from species_history h"
                    + " join revision r on r.id = h.revision_id where h.site_id = ? and h.id = ? order by r.id";

    private final SpeciesRepository species;
    private final JdbcClient database;

    SpeciesKeeping(SpeciesRepository species, JdbcClient database) {
        this.species = species;
        this.database = database;
    }

    /**
     * Enters a species.
     *
     * @throws TakenException if the site has a species with this scientific name
     */
    @Transactional
    public SpeciesFacts add(long siteId, SpeciesName name) {
        checkIsFree(siteId, name, NONE);
        return store(new Species(siteId, name));
    }

    /**
     * Gives a species another name; whatever hangs on it stays.
     *
     * @param version the version that the form was made from
     * @throws ObjectOptimisticLockingFailureException if somebody has changed the species since
     * @throws TakenException if the site has another species with this scientific name
     */
    @Transactional
    public void rename(long siteId, long speciesId, long version, SpeciesName name) {
        Species found = find(siteId, speciesId);
        if (found.facts().version() != version) {
            throw new ObjectOptimisticLockingFailureException(Species.class, speciesId);
        }
        checkIsFree(siteId, name, speciesId);
        found.rename(name);
        store(found);
    }

    @Transactional(readOnly = true)
    public SpeciesFacts get(long siteId, long speciesId) {
        return find(siteId, speciesId).facts();
    }

    /** All species of a site, by scientific name. */
    @Transactional(readOnly = true)
    public List<SpeciesFacts> all(long siteId) {
        return species.all(siteId).stream()
                .map(Species::facts)
                .sorted(Comparator.comparing(SpeciesFacts::scientificName).thenComparing(SpeciesFacts::id))
                .toList();
    }

    /** All species of a site, by id. */
    @Transactional(readOnly = true)
    public Map<Long, SpeciesFacts> byId(long siteId) {
        return all(siteId).stream().collect(Collectors.toMap(SpeciesFacts::id, facts -> facts));
    }

    /** Holds a species against others until the transaction ends, so that what hangs on it is numbered one by one. */
    @Transactional
    public SpeciesFacts hold(long siteId, long speciesId) {
        return species.lockAtSite(siteId, speciesId).map(Species::facts).orElseThrow(NotFoundException::new);
    }

    /** The names that a species has had, newest first; one that was saved again unchanged stands once. */
    @Transactional(readOnly = true)
    public List<NameOnRecord> names(long siteId, long speciesId) {
        List<NameOnRecord> newestFirst = new ArrayList<>();
        database.sql(NAMES)
                .params(siteId, speciesId)
                .query((row, number) -> name(row))
                .list()
                .forEach(found -> {
                    if (newestFirst.isEmpty() || !newestFirst.get(0).name().equals(found.name())) {
                        newestFirst.add(0, found);
                    }
                });
        return newestFirst;
    }

    private static NameOnRecord name(ResultSet row) throws SQLException {
        Optional<Long> by = Optional.ofNullable(row.getObject("person_id", Long.class));
        return new NameOnRecord(
                new SpeciesName(row.getString("scientific_name"), row.getString("common_name")),
                Instant.ofEpochMilli(row.getLong("at")),
                by.map(OptionalLong::of).orElseGet(OptionalLong::empty));
    }

    private Species find(long siteId, long speciesId) {
        return species.findAtSite(siteId, speciesId).orElseThrow(NotFoundException::new);
    }

    private void checkIsFree(long siteId, SpeciesName name, long except) {
        if (species.isTaken(siteId, name.scientific(), except)) {
            throw new TakenException("the site has a species of this name");
        }
    }

    /** Of two who enter one name in the same moment, the constraint of the database stops the second. */
    private SpeciesFacts store(Species entered) {
        try {
            return species.saveAndFlush(entered).facts();
        } catch (DataIntegrityViolationException taken) {
            throw new TakenException("the site has a species of this name by now");
        }
    }
}
