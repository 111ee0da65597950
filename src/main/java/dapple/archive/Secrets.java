package dapple.archive;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What lets people and programs in, or is theirs alone: never part of a year's record, which leaves the house. */
final class Secrets {
    /** Tables of which no row goes out: keys of programs, and what light fell on who read. */
    static final Set<String> TABLES = Set.of("api_token", "kept_dose");

    /** No password has this for its hash. */
    private static final String OF_NO_PASSWORD = "{bcrypt}of no password";

    /** Columns, and what stands in their cells instead. */
    private static final Map<String, Optional<String>> COLUMNS = Map.of(
            "person.password_hash", Optional.of(OF_NO_PASSWORD),
            "person.reset_code_hash", Optional.empty(),
            "person.reset_expires_at", Optional.empty());

    private Secrets() {}

    static boolean isSecret(String table, String column) {
        return TABLES.contains(table) || COLUMNS.containsKey(table + "." + column);
    }

    /** What stands in a secret column instead of what the database holds. */
    static Optional<String> instead(String table, String column) {
        return COLUMNS.getOrDefault(table + "." + column, Optional.empty());
    }
}
