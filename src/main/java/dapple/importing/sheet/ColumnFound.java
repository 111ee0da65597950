package dapple.importing.sheet;

import java.util.List;

/**
 * A column as a sheet has it.
 *
 * @param samples the first few different texts in it
 * @param onlyDays whether it has days, and nothing else
 */
public record ColumnFound(String name, List<String> samples, DayOrder days, boolean onlyDays) {}
