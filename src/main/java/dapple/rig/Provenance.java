package dapple.rig;

import dapple.site.SourceMark;

/**
 * Where a figure comes from.
 *
 * @param mark measured here, or how far an estimate is known
 * @param source who measured it, when and how, or what it was taken from
 */
public record Provenance(SourceMark mark, String source) {
    public boolean isMeasured() {
        return mark == SourceMark.MEASURED;
    }
}
