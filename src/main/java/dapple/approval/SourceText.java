package dapple.approval;

import dapple.site.SourceMark;
import java.util.Arrays;
import java.util.Optional;

/** Where a number comes from, as typed. */
final class SourceText {
    static final int LONGEST = 300;

    private SourceText() {}

    static Optional<SourceMark> mark(String typed) {
        return Arrays.stream(SourceMark.values())
                .filter(mark -> mark.name().equals(typed))
                .findFirst();
    }

    /** Something to read on one line, not too long. */
    static boolean isLine(String typed) {
        return !typed.isBlank()
                && typed.strip().length() <= LONGEST
                && typed.chars().noneMatch(Character::isISOControl);
    }
}
