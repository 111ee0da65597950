package dapple.reading;

import java.time.Instant;
import java.util.Optional;

/**
 * A reading that was written down elsewhere, before or beside this program.
 *
 * @param amount as the meter showed it, in the unit of the meter's quantity
 * @param dayOnly whether the sheet knows the day alone; then {@code takenAt} is noon of it
 * @param takenBy the name that the sheet gives, of whom this site knows nobody or somebody
 */
public record SheetReading(
        long enclosureId,
        long pointId,
        long meterId,
        double amount,
        Instant takenAt,
        boolean dayOnly,
        Optional<String> takenBy) {}
