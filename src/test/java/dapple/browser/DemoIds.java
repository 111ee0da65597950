package dapple.browser;

import java.time.LocalDate;
import java.util.UUID;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Finds the demo's things by the names that people use. */
@TestComponent
class DemoIds {
    private final JdbcClient database;

    DemoIds(JdbcClient database) {
        this.database = database;
    }

    /** The site of the demo. */
    long site() {
        return id("select min(id) from site");
    }

    long enclosure(String code) {
        return id("select id from enclosure where code = ?", code);
    }

    /** The code on the door of an enclosure. */
    String doorCode(String enclosure) {
        return database.sql("select code from door where open_enclosure_id = ?")
                .param(enclosure(enclosure))
                .query(String.class)
                .single();
    }

    /** The first photo of the demo. */
    long photo() {
        return id("select min(id) from visit_photo");
    }

    /** The room of an enclosure. */
    long room(String enclosure) {
        return id("select room_id from enclosure where code = ?", enclosure);
    }

    long meter(String code) {
        return id("select id from meter where code = ?", code);
    }

    /** The newest calibration of a meter. */
    long calibration(String meter) {
        return id("select max(id) from calibration where meter_id = ?", meter(meter));
    }

    /** The newest event of a meter. */
    long meterEvent(String meter) {
        return id("select max(id) from meter_event where meter_id = ?", meter(meter));
    }

    /** The first comparison of the demo. */
    long comparison() {
        return id("select min(id) from comparison");
    }

    /** What the demo's readings say of a meter; it is there before the first page is served. */
    long meterFinding() {
        return id("select id from agreement_finding where meter_id = ?", meter("M7"));
    }

    long animal(String name) {
        return id("select id from animal where name = ?", name);
    }

    long species(String scientificName) {
        return id("select id from species where scientific_name = ?", scientificName);
    }

    /** The present stay of an animal. */
    long stay(String animal) {
        return id("select id from stay where open_animal_id = ?", animal(animal));
    }

    long person(String signInName) {
        return id("select id from person where sign_in_name = ?", signInName);
    }

    long point(String enclosure, String point) {
        return id("select id from measuring_point where enclosure_id = ? and code = ?", enclosure(enclosure), point);
    }

    /** The newest reading at a point. */
    long reading(String enclosure, String point) {
        return id("select max(id) from reading where point_id = ?", point(enclosure, point));
    }

    /** The visit in which the newest reading at a point was taken. */
    UUID visit(String enclosure, String point) {
        return database.sql("select v.entry_key from visit v join reading r on r.visit_id = v.id where r.id = ?")
                .param(reading(enclosure, point))
                .query(UUID.class)
                .single();
    }

    long circuit(String name) {
        return id("select id from circuit where name = ?", name);
    }

    long lamp(String tag) {
        return id("select id from lamp where tag = ?", tag);
    }

    /** The part of a rig that is in force, by the table that keeps it. */
    long partOfRig(String table, String enclosure) {
        return id("select max(id) from " + table + " where to_at is null and enclosure_id = ?", enclosure(enclosure));
    }

    /** The newest draft of an enclosure. */
    long draft(String enclosure) {
        return id("select max(id) from draft where enclosure_id = ?", enclosure(enclosure));
    }

    /** The model of a lamp. */
    long lampModel(String tag) {
        return id("select lamp_model_id from lamp where tag = ?", tag);
    }

    /** The newest measurement of a lamp. */
    long lampOutput(String tag) {
        return id("select max(id) from lamp_output where lamp_id = ?", lamp(tag));
    }

    long round(String title) {
        return id("select id from round_plan where title = ?", title);
    }

    /** The day of the newest walk of a round of which something was said. */
    LocalDate walkDueOn(String title) {
        return database.sql("select max(due_on) from round_walk where plan_id = ?")
                .param(round(title))
                .query(LocalDate.class)
                .single();
    }

    private long id(String query, Object... names) {
        return database.sql(query).params(names).query(Long.class).single();
    }
}
