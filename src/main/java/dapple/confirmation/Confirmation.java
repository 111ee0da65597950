package dapple.confirmation;

import java.util.List;

/** Zones confirmed by one person for one reason. */
public record Confirmation(List<Confirmed> zones, long personId, String reason) {}
