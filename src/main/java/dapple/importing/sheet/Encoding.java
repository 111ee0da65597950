package dapple.importing.sheet;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How the bytes of a sheet become letters.
 *
 * @param markBytes how long the mark before the text is
 */
record Encoding(Charset charset, int markBytes) {
    /** How much is looked at. */
    static final int LOOKED_AT = 1024 * 1024;

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    /**
     * What the first bytes tell: a mark, else strict UTF-8, else Windows-1252.
     *
     * @param isWhole whether there are no more bytes
     */
    static Encoding of(byte[] head, boolean isWhole) {
        if (begins(head, 0xEF, 0xBB, 0xBF)) {
            return new Encoding(StandardCharsets.UTF_8, 3);
        }
        if (begins(head, 0xFF, 0xFE)) {
            return new Encoding(StandardCharsets.UTF_16LE, 2);
        }
        if (begins(head, 0xFE, 0xFF)) {
            return new Encoding(StandardCharsets.UTF_16BE, 2);
        }
        if (!isWithoutControls(head)) {
            throw new UnreadableException(Fault.NOT_TEXT);
        }
        return new Encoding(isUtf8(head, isWhole) ? StandardCharsets.UTF_8 : WINDOWS_1252, 0);
    }

    private static boolean begins(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int at = 0; at < mark.length; at++) {
            if ((head[at] & 0xFF) != mark[at]) {
                return false;
            }
        }
        return true;
    }

    /** Whether bytes begin with the mark of a text, or hold nothing that no text has. */
    static boolean isText(byte[] head) {
        return begins(head, 0xFF, 0xFE) || begins(head, 0xFE, 0xFF) || isWithoutControls(head);
    }

    private static boolean isWithoutControls(byte[] head) {
        for (byte one : head) {
            if (one >= 0 && one < ' ' && one != '\t' && one != '\n' && one != '\r' && one != '\f') {
                return false;
            }
        }
        return true;
    }

    private static boolean isUtf8(byte[] head, boolean isWhole) {
        CharsetDecoder strict = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer letters = CharBuffer.allocate(head.length + 1);
        return !strict.decode(ByteBuffer.wrap(head), letters, isWhole).isError();
    }
}
