package dapple.meter;

import java.util.Locale;
import java.util.Optional;

/** A file to keep, whose first bytes say what it is. */
final class Filed {
    private static final int MOST_LETTERS = 120;

    private final String name;
    private final CertificateKind kind;
    private final byte[] content;
    private final long personId;

    private Filed(String name, CertificateKind kind, byte[] content, long personId) {
        this.name = name;
        this.kind = kind;
        this.content = content.clone();
        this.personId = personId;
    }

    /** Empty if it is none of the kinds that are kept. */
    static Optional<Filed> of(String name, byte[] content, long personId) {
        return CertificateKind.of(content).map(kind -> new Filed(named(name, kind), kind, content, personId));
    }

    /** Without folders, control characters and what a file's name may not hold. */
    private static String named(String given, CertificateKind kind) {
        String last = given.replace('\\', '/');
        String plain = last.substring(last.lastIndexOf('/') + 1)
                .replaceAll("[\\p{Cntrl}\"<>:|?*]", "")
                .strip();
        String name = plain.isEmpty() ? "certificate." + kind.name().toLowerCase(Locale.ROOT) : plain;
        return name.length() > MOST_LETTERS ? name.substring(name.length() - MOST_LETTERS) : name;
    }

    String name() {
        return name;
    }

    CertificateKind kind() {
        return kind;
    }

    int size() {
        return content.length;
    }

    byte[] content() {
        return content.clone();
    }

    long personId() {
        return personId;
    }
}
