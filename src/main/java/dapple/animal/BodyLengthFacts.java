package dapple.animal;

import java.time.LocalDate;

/** A measured length of the body, m. */
public record BodyLengthFacts(double metres, LocalDate measuredOn) {}
