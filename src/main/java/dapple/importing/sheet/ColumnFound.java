package dapple.importing.sheet;

import java.util.List;

/**
 * A column as a sheet has it.
 *
 * @param samples the first few different texts in it
 */
public record ColumnFound(String name, List<String> samples, DayOrder days) {}
