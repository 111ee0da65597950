package dapple.review;

/**
 * What readings lack to be judged.
 *
 * @param animals whether nobody lives in any enclosure of those that are looked at
 * @param targets in how many enclosures something was read that no target judges
 */
public record Missing(boolean animals, long targets) {
    public boolean isAnything() {
        return animals || targets > 0;
    }
}
