package dapple.meter;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** What a certificate may be: told by the first bytes of the file, whatever its name says. */
public enum CertificateKind {
    /** {@code %PDF-} [iso32000, 7.5.2]. */
    PDF("application/pdf", "255044462d"),
    /** The signature of eight bytes [png, 5.2]. */
    PNG("image/png", "89504e470d0a1a0a"),
    /** Start of image, and the first byte of the next marker [t81, B.2]. */
    JPEG("image/jpeg", "ffd8ff");

    private final String mediaType;
    private final String begin;

    CertificateKind(String mediaType, String begin) {
        this.mediaType = mediaType;
        this.begin = begin;
    }

    public String mediaType() {
        return mediaType;
    }

    static Optional<CertificateKind> of(byte[] content) {
        return Arrays.stream(values()).filter(kind -> kind.begins(content)).findFirst();
    }

    private boolean begins(byte[] content) {
        byte[] expected = HexFormat.of().parseHex(begin);
        return content.length >= expected.length
                && Arrays.equals(content, 0, expected.length, expected, 0, expected.length);
    }
}
