package dapple.keeper;

import dapple.light.dose.KeeperDose;
import java.time.LocalDate;

/** All that fell on a person on one day of the site. */
public record DoseDay(LocalDate date, KeeperDose dose) {}
