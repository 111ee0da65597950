package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Reason;

/**
 * A row that cannot be taken in.
 *
 * @param column empty: the row as a whole
 * @param text what the reason speaks of
 */
public record BadRow(String sheet, long line, String column, Reason reason, String text) {
    static BadRow of(Origin origin, BadCellException bad) {
        return new BadRow(origin.sheet(), origin.line(), bad.column(), bad.reason(), bad.text());
    }
}
