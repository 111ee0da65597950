package dapple.importing;

import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which species names of sheets mean at a site, as somebody said last; by key of the name. */
@Repository
class SpeciesMeant {
    private final JdbcClient database;

    SpeciesMeant(JdbcClient database) {
        this.database = database;
    }

    Map<String, String> at(long siteId) {
        return database
                .sql("select name, meaning from import_species where site_id = :site")
                .param("site", siteId)
                .query((row, number) -> Map.entry(row.getString("name"), row.getString("meaning")))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** @param said by key of the name; an empty text: what was said before no longer counts */
    void remember(long siteId, Map<String, String> said) {
        said.forEach((name, meaning) -> {
            database.sql("delete from import_species where site_id = :site and name = :name")
                    .param("site", siteId)
                    .param("name", name)
                    .update();
            if (!meaning.isEmpty()) {
                database.sql("insert into import_species (site_id, name, meaning) values (:site, :name, :meaning)")
                        .param("site", siteId)
                        .param("name", name)
                        .param("meaning", meaning)
                        .update();
            }
        });
    }
}
