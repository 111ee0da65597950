package dapple.importing;

import java.util.List;

/** Everything that one row says. */
record RowSaid(List<Said> things, List<SaidReading> readings) {}
