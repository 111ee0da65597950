package dapple.importing.sheet;

import java.util.List;

/**
 * One row as it stands in the file.
 *
 * @param line where it begins, from 1
 */
public record SheetRow(long line, List<String> cells) {
    /** A cell without what surrounds it; what is missing is empty. */
    public String cell(int column) {
        return column < cells.size() ? Cells.plain(cells.get(column)) : "";
    }

    /** Whether nothing stands in any cell. */
    boolean isEmpty() {
        for (String cell : cells) {
            if (!Cells.plain(cell).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    long filled() {
        return cells.stream().filter(cell -> !Cells.plain(cell).isEmpty()).count();
    }
}
