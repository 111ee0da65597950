package dapple.archive.sheet;

import java.util.List;

/** The weeks of all enclosures of a site, in walking order, and how many readings they rest on. */
record YearOfWeeks(List<EnclosureYear> enclosures, long readings) {
    YearOfWeeks {
        enclosures = List.copyOf(enclosures);
    }
}
