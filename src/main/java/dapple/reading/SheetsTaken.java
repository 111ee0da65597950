package dapple.reading;

import java.util.List;

/**
 * What became of the readings of a sheet.
 *
 * @param visits that were added
 * @param stored readings that were added
 * @param known readings that were on record already, or stood in the sheet twice
 * @param differing readings for which another amount is on record, or stands in the sheet too: none of them was added
 */
public record SheetsTaken(long visits, long stored, long known, long differing, List<Differing> examples) {

    /** A reading that is on record, or in the sheet, with another amount. */
    public record Differing(SheetReading said, double standing) {}
}
