package dapple.light.judging;

import java.util.List;
import java.util.Optional;

/**
 * What several animals in one exhibit ask of each place together.
 *
 * @param basking the ranges of their basking points
 * @param shadeHigh the most that a shade point for all may have: the strictest
 * @param ceiling what no point that all reach may come to: the strictest
 */
public record SharedLimits(SharedBand basking, double shadeHigh, double ceiling) {
    /** From the limits of each, at least one. */
    public static SharedLimits of(List<Limits> limits) {
        return new SharedLimits(
                SharedBand.of(limits.stream().map(Limits::basking).toList()),
                SharedBand.strictest(limits.stream().map(Limits::shadeHigh).toList())
                        .orElseThrow(),
                SharedBand.strictest(limits.stream().map(Limits::ceiling).toList())
                        .orElseThrow());
    }

    /** Where all can bask at one point; none if they need points of their own, or the strictest ceiling forbids it. */
    public Optional<Band> baskingForAll() {
        return basking.commonBelow(ceiling);
    }

    /** Whether the basking range of one of them reaches the ceiling of another: the other must not get there. */
    public boolean isBaskingOverACeiling() {
        return basking.served().stream().anyMatch(band -> band.high() >= ceiling);
    }
}
