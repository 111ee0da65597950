package dapple.people;

import java.util.Locale;

/**
 * What stands instead of a person's names.
 *
 * @param name such as "Former keeper 7"
 * @param signInName which no form takes, for it has spaces
 */
public record ErasedName(String name, String signInName) {
    static ErasedName of(Role role, long personId) {
        String name = "Former " + role.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " " + personId;
        return new ErasedName(name, name.toLowerCase(Locale.ROOT));
    }
}
