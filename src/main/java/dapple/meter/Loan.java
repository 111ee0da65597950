package dapple.meter;

import java.time.LocalDate;
import java.util.Optional;

/** Whom a meter is borrowed from, and the last day that it may be kept. */
public record Loan(String lender, Optional<LocalDate> until) {}
