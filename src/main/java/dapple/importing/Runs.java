package dapple.importing;

import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Survey;
import dapple.site.NotFoundException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.springframework.stereotype.Repository;

/** The imports on record, and what columns meant before. */
@Repository
class Runs {
    private static final int LISTED = 50;
    private static final String ALL = "select * from import_run where site_id = :site ";

    private final JdbcClient database;

    Runs(JdbcClient database) {
        this.database = database;
    }

    /** A file that was sent. */
    record NewRun(
            long siteId,
            long personId,
            Instant at,
            String fileName,
            String sha256,
            long bytes,
            List<Survey> surveys,
            List<String> leftOut,
            Choices choices) {}

    long add(NewRun run) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        database.sql(
                        "insert into import_run (site_id, begun_by, begun_at, file_name, sha256, size_bytes, state, surveys,"
                                + " left_out, choices) values (:site, :person, :at, :name, :sha, :bytes, 'OPEN', :surveys,"
                                + " :leftOut, :choices)")
                .param("site", run.siteId())
                .param("person", run.personId())
                .param("at", time(run.at()))
                .param("name", run.fileName())
                .param("sha", run.sha256())
                .param("bytes", run.bytes())
                .param("surveys", RunText.write(run.surveys()))
                .param("leftOut", RunText.write(run.leftOut()))
                .param("choices", RunText.write(run.choices()))
                .update(key, "id");
        return Optional.ofNullable(key.getKey()).orElseThrow().longValue();
    }

    Run get(long siteId, long id) {
        return database.sql(ALL + "and id = :id")
                .param("site", siteId)
                .param("id", id)
                .query((row, number) -> run(row))
                .optional()
                .orElseThrow(NotFoundException::new);
    }

    /** The same, held for the rest of the transaction. */
    Run hold(long siteId, long id) {
        return database.sql(ALL + "and id = :id for update")
                .param("site", siteId)
                .param("id", id)
                .query((row, number) -> run(row))
                .optional()
                .orElseThrow(NotFoundException::new);
    }

    /** The newest, newest first. */
    List<Run> newest(long siteId) {
        return database.sql(ALL + "order by begun_at desc, id desc limit " + LISTED)
                .param("site", siteId)
                .query((row, number) -> run(row))
                .list();
    }

    /** When a file with the same content was taken in last. */
    Optional<Instant> takenInBefore(long siteId, String sha256) {
        return database.sql("select ended_at from import_run where site_id = :site and sha256 = :sha and state = 'DONE'"
                        + " order by ended_at desc limit 1")
                .param("site", siteId)
                .param("sha", sha256)
                .query((row, number) -> instant(row, "ended_at").orElseThrow())
                .optional();
    }

    void choose(Run run, Choices choices) {
        database.sql("update import_run set choices = :choices, tried = null where id = :id and state = 'OPEN'")
                .param("choices", RunText.write(choices))
                .param("id", run.id())
                .update();
    }

    void tried(Run run, Tried tried) {
        database.sql("update import_run set tried = :tried where id = :id and state = 'OPEN'")
                .param("tried", RunText.write(tried))
                .param("id", run.id())
                .update();
    }

    void done(Run run, Done done, Instant at) {
        database.sql("update import_run set done = :done, state = 'DONE', ended_at = :at where id = :id")
                .param("done", RunText.write(done))
                .param("at", time(at))
                .param("id", run.id())
                .update();
    }

    /** Ends an import that has stored nothing. */
    void end(Run run, Run.State state, Instant at) {
        database.sql("update import_run set state = :state, ended_at = :at where id = :id and state = 'OPEN'")
                .param("state", state.name())
                .param("at", time(at))
                .param("id", run.id())
                .update();
    }

    /** Ends those of all sites that were begun before an instant and have stored nothing. */
    void expire(Instant before, Instant at) {
        database.sql(
                        "update import_run set state = 'EXPIRED', ended_at = :at where state = 'OPEN' and begun_at < :before")
                .param("before", time(before))
                .param("at", time(at))
                .update();
    }

    /** What columns meant when somebody chose last, by normalised name. */
    Map<String, Meaning> columns(long siteId) {
        Map<String, Meaning> chosen = new HashMap<>();
        database.sql("select name, meaning from import_column where site_id = :site")
                .param("site", siteId)
                .query((row, number) -> Map.entry(row.getString("name"), row.getString("meaning")))
                .list()
                .forEach(one -> Meaning.of(one.getValue()).ifPresent(meaning -> chosen.put(one.getKey(), meaning)));
        return chosen;
    }

    void remember(long siteId, Map<String, Meaning> chosen) {
        chosen.forEach((name, meaning) -> {
            database.sql("delete from import_column where site_id = :site and name = :name")
                    .param("site", siteId)
                    .param("name", name)
                    .update();
            database.sql("insert into import_column (site_id, name, meaning) values (:site, :name, :meaning)")
                    .param("site", siteId)
                    .param("name", name)
                    .param("meaning", meaning.code())
                    .update();
        });
    }

    private static Run run(ResultSet row) throws SQLException {
        return new Run(
                row.getLong("id"),
                row.getLong("site_id"),
                row.getLong("begun_by"),
                instant(row, "begun_at").orElseThrow(),
                row.getString("file_name"),
                row.getString("sha256"),
                row.getLong("size_bytes"),
                Run.State.valueOf(row.getString("state")),
                Arrays.asList(RunText.read(row.getString("surveys"), Survey[].class)),
                Arrays.asList(RunText.read(row.getString("left_out"), String[].class)),
                RunText.read(row.getString("choices"), Choices.class),
                Optional.ofNullable(row.getString("tried")).map(text -> RunText.read(text, Tried.class)),
                Optional.ofNullable(row.getString("done")).map(text -> RunText.read(text, Done.class)),
                instant(row, "ended_at"));
    }

    private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, OffsetDateTime.class)).map(OffsetDateTime::toInstant);
    }

    private static OffsetDateTime time(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }
}
