package dapple.site;

import java.util.List;

/**
 * A page of a thing's history.
 *
 * @param entries newest first
 * @param number of the page, from 1
 * @param hasOlder whether another page follows
 */
public record HistoryPage(List<HistoryEntry> entries, int number, boolean hasOlder) {}
