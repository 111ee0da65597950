package dapple.importing;

import dapple.importing.sheet.BadCellException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers what is wrong and what is worth knowing: all is counted, the first of it listed. */
final class Outcome {
    static final int LISTED = 1000;
    private static final int NOTICES = 300;

    private final List<BadRow> badRows = new ArrayList<>();
    private final List<Notice> notices = new ArrayList<>();
    private final Set<BadRow> ofThings = new HashSet<>();
    private final Set<String> noticed = new HashSet<>();
    private long bad;
    private long dayOnly;
    private long notListed;

    void bad(Origin origin, BadCellException why) {
        BadRow row = BadRow.of(origin, why);
        if (!ofThings.contains(row)) {
            count(row);
        }
    }

    /** The same for a thing that a row says first: rows that fall with it say so too, and this row says it once. */
    void badThing(Origin origin, BadCellException why) {
        BadRow row = BadRow.of(origin, why);
        if (ofThings.add(row)) {
            count(row);
        }
    }

    private void count(BadRow row) {
        bad++;
        if (badRows.size() < LISTED) {
            badRows.add(row);
        }
    }

    /** Says something once. */
    void notice(Notice.Kind kind, String text, Origin origin) {
        if (notices.size() >= NOTICES) {
            notListed++;
        } else if (noticed.add(kind + "\n" + text)) {
            notices.add(new Notice(kind, text, origin.sheet(), origin.line()));
        }
    }

    void countDayOnly() {
        dayOnly++;
    }

    List<BadRow> badRows() {
        return badRows;
    }

    List<Notice> notices() {
        return notices;
    }

    long bad() {
        return bad;
    }

    long dayOnly() {
        return dayOnly;
    }

    long noticesNotListed() {
        return notListed;
    }
}
