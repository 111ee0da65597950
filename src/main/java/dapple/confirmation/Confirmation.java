package dapple.confirmation;

import java.util.List;

/**
 * Zones confirmed by one person for one reason.
 *
 * @param isForEarlierReadings whether the targets count for readings taken before too
 */
public record Confirmation(List<Confirmed> zones, long personId, String reason, boolean isForEarlierReadings) {}
