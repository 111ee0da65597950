package dapple.people;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/** What an administrator changes of a person at one site. */
public record PersonChange(String name, Set<Role> roles, Optional<LocalDate> lastDay) {}
