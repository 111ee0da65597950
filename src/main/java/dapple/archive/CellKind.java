package dapple.archive;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** How the cells of a column are written, so that either database reads back exactly what the other has held. */
enum CellKind {
    WHOLE("bigint", "int8", "bigserial", "integer", "int4", "serial", "smallint", "int2") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            long whole = row.getLong(place);
            return row.wasNull() ? null : Long.toString(whole);
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setLong(place, Long.parseLong(cell));
        }
    },
    /** As the shortest decimals that give the same number again. */
    NUMBER("double precision", "float8") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            double number = row.getDouble(place);
            return row.wasNull() ? null : Double.toString(number);
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setDouble(place, Double.parseDouble(cell));
        }
    },
    TRUTH("boolean", "bool") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            boolean holds = row.getBoolean(place);
            return row.wasNull() ? null : Boolean.toString(holds);
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setBoolean(place, Boolean.parseBoolean(cell));
        }
    },
    TEXT("character varying", "varchar", "character", "bpchar", "text") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            return row.getString(place);
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setString(place, cell);
        }
    },
    /** UTC, with microseconds. */
    INSTANT("timestamp with time zone", "timestamptz") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            OffsetDateTime at = row.getObject(place, OffsetDateTime.class);
            return at == null ? null : MICROSECONDS.format(at.withOffsetSameInstant(ZoneOffset.UTC));
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setObject(place, Instant.parse(cell).atOffset(ZoneOffset.UTC));
        }
    },
    DAY("date") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            LocalDate day = row.getObject(place, LocalDate.class);
            return day == null ? null : day.toString();
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setObject(place, LocalDate.parse(cell));
        }
    },
    KEY("uuid") {
        @Override
        @Nullable
        String read(ResultSet row, int place) throws SQLException {
            UUID key = row.getObject(place, UUID.class);
            return key == null ? null : key.toString();
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) throws SQLException {
            to.setObject(place, UUID.fromString(cell));
        }
    },
    /** Kept beside the table: its cell names the entry. */
    FILE("binary varying", "bytea") {
        @Override
        @Nullable
        String read(ResultSet row, int place) {
            throw new IllegalStateException("files are not written into cells");
        }

        @Override
        void bind(PreparedStatement to, int place, String cell) {
            throw new IllegalStateException("files are not read from cells");
        }
    };

    private static final DateTimeFormatter MICROSECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSSX", Locale.ROOT);

    private final String typeNames;

    CellKind(String... typeNames) {
        this.typeNames = "," + String.join(",", typeNames) + ",";
    }

    /** What the cell is written as; null, which the file tells from an empty text, where the database holds null. */
    abstract @Nullable String read(ResultSet row, int place) throws SQLException;

    abstract void bind(PreparedStatement to, int place, String cell) throws SQLException;

    static CellKind ofType(String databaseType) {
        String name = "," + databaseType.toLowerCase(Locale.ROOT) + ",";
        for (CellKind kind : values()) {
            if (kind.typeNames.contains(name)) {
                return kind;
            }
        }
        throw new IllegalStateException("no cells are known for columns of type " + databaseType);
    }
}
