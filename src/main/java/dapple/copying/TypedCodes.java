package dapple.copying;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.validation.Errors;

/** The codes of copies as they were typed, one a line. */
record TypedCodes(List<String> codes) {
    /** Copies of one form at most (a definition of ours). */
    static final int MOST = 30;

    /** As long as a code may be. */
    private static final int LONGEST = 20;

    /** Leaves room for the number of a lamp in its tag. */
    private static final int LONGEST_WITH_LAMPS = 16;

    TypedCodes {
        codes = List.copyOf(codes);
    }

    static TypedCodes of(String typed) {
        return new TypedCodes(
                typed.lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
    }

    void check(boolean tagLamps, Errors errors) {
        int longest = tagLamps ? LONGEST_WITH_LAMPS : LONGEST;
        if (codes.isEmpty()) {
            errors.rejectValue("codes", "copying.codes.needed");
        } else if (codes.size() > MOST) {
            reject(errors, "copying.codes.too-many", MOST);
        } else if (codes.stream().anyMatch(TypedCodes::isOdd)) {
            errors.rejectValue("codes", "copying.codes.odd");
        } else {
            codes.stream()
                    .filter(code -> code.length() > longest)
                    .findFirst()
                    .ifPresent(code -> reject(errors, "copying.codes.long", code, longest));
            twice().ifPresent(code -> reject(errors, "copying.codes.twice", code));
        }
    }

    static void reject(Errors errors, String message, Object... what) {
        errors.rejectValue("codes", message, what, message);
    }

    private static boolean isOdd(String code) {
        return code.chars().anyMatch(Character::isISOControl);
    }

    private Optional<String> twice() {
        Set<String> seen = new HashSet<>();
        return codes.stream().filter(code -> !seen.add(Copying.small(code))).findFirst();
    }
}
