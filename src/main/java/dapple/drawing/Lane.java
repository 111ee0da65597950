package dapple.drawing;

import java.time.LocalDate;
import java.util.List;

/** What went on below the doses: stays, the rig, orders. */
public record Lane(String name, List<Entry> entries) {
    /**
     * Words over some days.
     *
     * @param until day after the last, {@link LocalDate#MAX} while it lasts; the day from for what has no length
     */
    public record Entry(LocalDate from, LocalDate until, String words) {}
}
