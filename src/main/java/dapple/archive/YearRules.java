package dapple.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which rows of each table go into a year's record of a site. Every table stands here once, either among those that grow
 * with what is read or among those that go whole; a test fails for a table that is in neither.
 */
final class YearRules {
    private static final String ALL = "1 = 1";
    private static final String NONE = "1 = 0";
    private static final String OF_SITE = "t.site_id = :site";
    private static final String IN_TIME = ">= :from and %1$s < :to";

    /** Decisions and alarms that Review still shows go as well, however old they are. */
    private static final String DECISIONS = "t.site_id = :site and (t.made_at >= :from and t.made_at < :to "
            + "or t.made_at >= (select min(l.state_since) from latest_reading l where l.site_id = :site))";

    private static final String ALARMS =
            "t.site_id = :site and (t.raised_at >= :from and t.raised_at < :to or t.seen_at is null)";

    /** Readings of whatever time that newer rows still name. */
    private static final String NAMED = "select l.reading_id from latest_reading l where l.site_id = :site"
            + " union select c.reading_id from commissioning_reading c"
            + " join commissioning k on k.id = c.commissioning_id where k.site_id = :site"
            + " union select t.reading_id from decision t where t.reading_id is not null and " + DECISIONS
            + " union select t.reading_id from alarm t where " + ALARMS;

    private static final String VISITS = "v.site_id = :site and (v.begun_at " + IN_TIME.formatted("v.begun_at")
            + " or v.id in (select n.visit_id from reading n where n.id in (" + NAMED + ")))";

    /** What grows with what is read, limited in time. */
    private static final Map<String, String> GROWING = growing();

    /** What goes whole, as far as it is the site's. */
    private static final Map<String, String> WHOLE = whole();

    private YearRules() {}

    private static Map<String, String> growing() {
        Map<String, String> rules = new HashMap<>();
        rules.put("visit", VISITS.replace("v.", "t."));
        for (String table : List.of("reading", "unread_point", "visit_note", "visit_cover", "visit_photo")) {
            rules.put(table, "exists (select 1 from visit v where v.id = t.visit_id and " + VISITS + ")");
        }
        for (String table : List.of("verdict", "reading_repeat", "reading_withdrawal")) {
            rules.put(table, ofReading("t.reading_id"));
        }
        rules.put(
                "blind_repeat",
                ofReading("t.reading_id") + " and (t.second_id is null or " + ofReading("t.second_id") + ")");
        rules.put(
                "visit_picture",
                "exists (select 1 from visit_photo f join visit v on v.id = f.visit_id where f.id = t.photo_id and "
                        + VISITS + ")");
        rules.put("decision", DECISIONS);
        rules.put("alarm", ALARMS);
        return rules;
    }

    private static String ofReading(String column) {
        return "exists (select 1 from reading r join visit v on v.id = r.visit_id where r.id = " + column + " and "
                + VISITS + ")";
    }

    private static Map<String, String> whole() {
        Map<String, String> rules = new HashMap<>();
        List.of(
                        "agreement_finding",
                        "agreement_run",
                        "animal",
                        "animal_event",
                        "animal_history",
                        "bench_series",
                        "body_length",
                        "calibration",
                        "certificate_file",
                        "circuit",
                        "circuit_history",
                        "commissioning",
                        "comparison",
                        "cover_item",
                        "door",
                        "draft",
                        "enclosure",
                        "enclosure_copy",
                        "enclosure_history",
                        "evidence_choice",
                        "fitting",
                        "furniture_item",
                        "import_column",
                        "import_run",
                        "import_species",
                        "lamp",
                        "lamp_history",
                        "lamp_model",
                        "lamp_model_history",
                        "lamp_model_output",
                        "lamp_model_output_history",
                        "lamp_output",
                        "lamp_photometry",
                        "lamp_spectrum",
                        "latest_reading",
                        "measuring_point",
                        "measuring_point_history",
                        "membership",
                        "membership_history",
                        "meter",
                        "meter_check",
                        "meter_event",
                        "meter_history",
                        "planned_off",
                        "reference_lamp",
                        "rejudging",
                        "repeat_seed",
                        "rig_change",
                        "room",
                        "room_history",
                        "round_plan",
                        "round_plan_history",
                        "round_stop",
                        "round_stop_history",
                        "round_walk",
                        "round_walk_history",
                        "site_settings",
                        "site_settings_history",
                        "species",
                        "species_evidence",
                        "species_history",
                        "stay",
                        "target_version",
                        "uncertainty_budget",
                        "vet_order")
                .forEach(table -> rules.put(table, OF_SITE));
        rules.put("site", "t.id = :site");
        rules.put("site_history", "t.id = :site");
        rules.put("installation", ALL);
        rules.put("person", "t.id in (" + people() + ")");
        rules.put("person_history", "t.id in (" + people() + ")");
        List.of("agreement_meter", "agreement_pair", "agreement_week")
                .forEach(table -> rules.put(table, hangingOn("agreement_run", "run_id")));
        List.of("point_animal", "point_quantity", "point_species")
                .forEach(table -> List.of(table, table + "_history")
                        .forEach(each -> rules.put(each, hangingOn("measuring_point", "point_id"))));
        List.of("comparison_meter", "comparison_point")
                .forEach(table -> rules.put(table, hangingOn("comparison", "comparison_id")));
        List.of("commissioning_factor", "commissioning_reading")
                .forEach(table -> rules.put(table, hangingOn("commissioning", "commissioning_id")));
        List.of("target_limit", "target_day_length")
                .forEach(table -> rules.put(table, hangingOn("target_version", "target_version_id")));
        rules.put("agreement_doubt", hangingOn("agreement_finding", "finding_id"));
        rules.put("bench_reading", hangingOn("bench_series", "bench_series_id"));
        rules.put("calibration_range", hangingOn("calibration", "calibration_id"));
        rules.put("certificate_part", hangingOn("certificate_file", "file_id"));
        rules.put("cover_transmittance", hangingOn("cover_item", "cover_item_id"));
        rules.put("uncertainty_part", hangingOn("uncertainty_budget", "budget_id"));
        rules.put("revision", revisions(rules));
        Secrets.TABLES.forEach(table -> rules.put(table, NONE));
        return rules;
    }

    /** Whoever has ever had a role there: what they recorded keeps its author. */
    private static String people() {
        return "select m.person_id from membership m where m.site_id = :site"
                + " union select h.person_id from membership_history h where h.site_id = :site";
    }

    private static String hangingOn(String parent, String column) {
        return "exists (select 1 from " + parent + " p where p.id = t." + column + " and p.site_id = :site)";
    }

    private static String revisions(Map<String, String> rules) {
        return rules.keySet().stream()
                .filter(table -> table.endsWith("_history"))
                .sorted()
                .map(table -> "select t.revision_id from " + table + " t where " + rules.get(table))
                .collect(Collectors.joining(" union ", "t.id in (", ")"));
    }

    /** The tables of which something is said here. */
    static Set<String> tables() {
        Set<String> tables = new TreeSet<>(GROWING.keySet());
        tables.addAll(WHOLE.keySet());
        return tables;
    }

    /** The tables that stand among both kinds: none. */
    static List<String> saidTwice() {
        List<String> both = new ArrayList<>(GROWING.keySet());
        both.retainAll(WHOLE.keySet());
        return both;
    }

    /** The condition for the rows of a table, named t there. */
    static String where(String table, RecordSpan span) {
        String rule = GROWING.getOrDefault(table, WHOLE.getOrDefault(table, ""));
        if (rule.isEmpty()) {
            throw new IllegalStateException("nothing says which rows of " + table + " belong to a year");
        }
        return rule.replace(":site", Long.toString(span.site().id()))
                .replace(":from", "timestamp with time zone '" + span.from() + "'")
                .replace(":to", "timestamp with time zone '" + span.to() + "'");
    }
}
