package dapple.animal;

import java.util.Locale;

/**
 * Which animals a list shows.
 *
 * @param text part of the name or the accession number
 * @param speciesId 0: all
 * @param enclosureId where it is now; 0: anywhere
 */
public record AnimalFilter(String text, long speciesId, long enclosureId, Shown shown) {
    /** Open records, closed ones, or both. */
    public enum Shown {
        HERE,
        GONE,
        ALL
    }

    String pattern() {
        String literal = text.strip()
                .toLowerCase(Locale.ROOT)
                .replace("!", "!!")
                .replace("%", "!%")
                .replace("_", "!_");
        return "%" + literal + "%";
    }
}
