package dapple.leaving;

import dapple.people.PersonFacts;
import java.io.StringWriter;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes everything that is kept about a person, for that person: rows that name them by id, texts that name them. */
@Service
class KeptAbout {
    private static final JsonFactory JSON = new JsonFactory();
    private static final int LONGEST_TEXT = 2000;
    private static final String NOT_SHOWN = "kept, not shown";

    private final StoredColumns columns;
    private final JdbcClient database;
    private final Clock clock;

    KeptAbout(StoredColumns columns, JdbcClient database, Clock clock) {
        this.columns = columns;
        this.database = database;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public String of(PersonFacts person) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeStringProperty("writtenAt", clock.instant().toString());
            json.writeArrayPropertyStart("account");
            rows("person", "id", person.id(), json);
            json.writeEndArray();
            json.writeObjectPropertyStart("records");
            columns.ofPeople().forEach(column -> records(column, person.id(), json));
            json.writeEndObject();
            json.writeArrayPropertyStart("texts");
            names(person).forEach(name -> texts(name, json));
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static List<NamePhrase> names(PersonFacts person) {
        return List.of(person.name(), person.signInName()).stream()
                .flatMap(name -> NamePhrase.of(name, name).stream())
                .toList();
    }

    private void records(StoredColumn column, long personId, JsonGenerator json) {
        json.writeArrayPropertyStart(column.table() + "." + column.name());
        rows(column.table(), column.name(), personId, json);
        json.writeEndArray();
    }

    private void rows(String table, String column, long id, JsonGenerator json) {
        database.sql("select * from %s where %s = :id".formatted(table, column))
                .param("id", id)
                .query((RowCallbackHandler) row -> write(row, json));
    }

    private static void write(ResultSet row, JsonGenerator json) throws SQLException {
        ResultSetMetaData about = row.getMetaData();
        json.writeStartObject();
        for (int place = 1; place <= about.getColumnCount(); place++) {
            String name = about.getColumnName(place).toLowerCase(Locale.ROOT);
            Optional<Object> cell = Optional.ofNullable(row.getObject(place));
            if (cell.isPresent()) {
                json.writeStringProperty(name, shown(name, cell.get()));
            }
        }
        json.writeEndObject();
    }

    private static String shown(String column, Object cell) {
        if (column.endsWith("_hash")) {
            return NOT_SHOWN;
        }
        if (cell instanceof byte[] file) {
            return file.length + " bytes";
        }
        if (cell instanceof Timestamp at) {
            return at.toInstant().toString();
        }
        String text = cell.toString();
        return text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + " …" : text;
    }

    private void texts(NamePhrase name, JsonGenerator json) {
        for (StoredColumn column : columns.texts()) {
            if (!column.table().startsWith("person") && !column.table().startsWith("spring_session")) {
                database
                        .sql("select distinct %2$s from %1$s where position(lower(:name) in lower(%2$s)) > 0"
                                .formatted(column.table(), column.name()))
                        .param("name", name.text())
                        .query(String.class)
                        .list()
                        .stream()
                        .filter(name::isIn)
                        .forEach(words -> text(column, words, json));
            }
        }
    }

    private static void text(StoredColumn column, String words, JsonGenerator json) {
        json.writeStartObject();
        json.writeStringProperty("in", column.table() + "." + column.name());
        json.writeStringProperty("text", shown(column.name(), words));
        json.writeEndObject();
    }
}
