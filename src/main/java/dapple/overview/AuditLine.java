package dapple.overview;

import dapple.reading.ReadingOnRecord;
import java.time.Instant;
import java.util.Optional;

/**
 * One thing that an audit tells of, for a file.
 *
 * @param what which lamp, animal, species or point
 * @param where its place
 * @param words what else is to be said of it
 * @param count of animals
 * @param to an instant, or a last day
 * @param recorded by whom and when
 * @param holds whether it does by what is known now
 */
record AuditLine(
        AuditKind kind,
        String what,
        String where,
        String words,
        Optional<Integer> count,
        Optional<Instant> from,
        Optional<?> to,
        Optional<Recorded> recorded,
        boolean holds,
        Optional<ReadingOnRecord> reading) {
    static AuditLine of(AuditKind kind, String what, String where) {
        return new AuditLine(
                kind,
                what,
                where,
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
    }

    AuditLine saying(String text) {
        return new AuditLine(kind, what, where, text, count, from, to, recorded, holds, reading);
    }

    AuditLine counting(int animals) {
        return new AuditLine(kind, what, where, words, Optional.of(animals), from, to, recorded, holds, reading);
    }

    AuditLine over(Instant begin, Optional<?> end) {
        return new AuditLine(kind, what, where, words, count, Optional.of(begin), end, recorded, holds, reading);
    }

    AuditLine recorded(Instant at, String by) {
        Optional<Recorded> said = Optional.of(new Recorded(at, by));
        return new AuditLine(kind, what, where, words, count, from, to, said, holds, reading);
    }

    AuditLine holding(boolean now) {
        return new AuditLine(kind, what, where, words, count, from, to, recorded, now, reading);
    }

    AuditLine read(ReadingOnRecord one) {
        return new AuditLine(kind, what, where, words, count, from, to, recorded, holds, Optional.of(one));
    }

    boolean wasOnRecord(Instant at) {
        return recorded.filter(said -> said.at().isAfter(at)).isEmpty();
    }

    record Recorded(Instant at, String by) {}
}
