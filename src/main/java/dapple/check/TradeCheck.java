package dapple.check;

import dapple.site.Caution;
import dapple.site.SourceMark;
import java.util.List;

/**
 * What everybody who lights reptiles looks for in a rig, the gravest first. Rule, figure and source of each stand in
 * {@code docs/checks.md}.
 */
public enum TradeCheck {
    /** More than the ceiling somewhere in reach. */
    CEILING(SourceMark.COMMON_PRACTICE, true),
    /** An ultraviolet lamp of which nobody knows what it emits. */
    SPECTRUM(SourceMark.PUBLISHED_SECONDARY, true),
    /** A lamp too close to what may burn or melt. */
    FIRE(SourceMark.COMMON_PRACTICE, true),
    /** A keeper's face is soon over the limit of exposure. */
    KEEPER(SourceMark.PUBLISHED_SECONDARY, true),
    /** No way out of the ultraviolet. */
    SHADE(SourceMark.PUBLISHED_SECONDARY, true),
    /** A lamp without the ballast that it needs. */
    BALLAST(SourceMark.COMMON_PRACTICE, true),
    /** An incandescent lamp that is dimmed, or switched by a thermostat. */
    DIMMER(SourceMark.FROM_MEMORY, false),
    /** A pane under an ultraviolet lamp. */
    PANE(SourceMark.PUBLISHED_SECONDARY, false),
    /** Two spots that light one place. */
    SPOTS(SourceMark.COMMON_PRACTICE, false),
    /** A basking patch smaller than the animal. */
    PATCH(SourceMark.COMMON_PRACTICE, false),
    /** Light and warmth here, ultraviolet there. */
    TOGETHER(SourceMark.PUBLISHED_SECONDARY, false),
    /** A compact lamp for an animal that it does not cover. */
    COMPACT(SourceMark.COMMON_PRACTICE, false),
    /** Ultraviolet only from lamps that do not last. */
    LASTING(SourceMark.PUBLISHED_SECONDARY, false),
    /** No light away from the basking place but what the basking lamps spill. */
    BACKGROUND(SourceMark.COMMON_PRACTICE, false),
    /** Days too long or too short for the season. */
    SEASON(SourceMark.COMMON_PRACTICE, false);

    private final SourceMark mark;
    private final boolean isGrave;

    TradeCheck(SourceMark mark, boolean isGrave) {
        this.mark = mark;
        this.isGrave = isGrave;
    }

    /** How far what it rests on is known. */
    public SourceMark mark() {
        return mark;
    }

    /** Whether an animal or a person may come to harm. */
    public boolean isGrave() {
        return isGrave;
    }

    /** What belongs beside it unless it holds. */
    public List<Caution> cautions() {
        return switch (this) {
            case CEILING -> List.of(Caution.ULTRAVIOLET, Caution.VET);
            case SPECTRUM -> List.of(Caution.SPECTRUM);
            case FIRE -> List.of(Caution.HEAT, Caution.MAINS);
            case KEEPER, SHADE -> List.of(Caution.ULTRAVIOLET);
            case BALLAST -> List.of(Caution.MAINS);
            case DIMMER -> List.of(Caution.HEAT);
            case PANE, SPOTS, PATCH, TOGETHER, COMPACT, LASTING, BACKGROUND, SEASON -> List.of();
        };
    }
}
