package dapple.site;

import java.util.Set;

/** What the sets of one field held together. */
record HeldSet(Set<Element> elements) {
    HeldSet {
        elements = Set.copyOf(elements);
    }

    /**
     * One of them.
     *
     * @param named the field under which its name or word is known
     */
    record Element(String named, Object held) {}
}
