package dapple.importing;

import dapple.importing.sheet.Mapping;
import java.util.List;
import java.util.Map;

/**
 * What a person says of the sheets of a file.
 *
 * @param names which species names of the sheets mean, by key; a name that stands for itself is meant as written
 * @param leaveOut whether bad rows are left out
 */
record Choices(List<Mapping> sheets, Map<String, String> names, boolean leaveOut) {
    Choices withNames(Map<String, String> others) {
        return new Choices(sheets, others, leaveOut);
    }

    Choices leavingOut(boolean badRows) {
        return new Choices(sheets, names, badRows);
    }
}
