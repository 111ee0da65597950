package dapple.photo;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held: in which of eight ways a picture wants turning and mirroring, by tag 0x0112 of Exif, the only one
 * that is looked at. It stands in the first Exif segment of a JPEG.
 */
record Turn(int orientation) {
    static final Turn NONE = new Turn(1);

    private static final int ORIENTATION_TAG = 0x0112;
    private static final int LAST = 8;
    private static final int ENTRY_BYTES = 12;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int EXIF_HEADER_BYTES = 6;

    /** As the file says; as it lies, where it says nothing that can be read. */
    static Turn of(byte[] file) {
        try {
            return read(ByteBuffer.wrap(file));
        } catch (RuntimeException damaged) {
            return NONE;
        }
    }

    private static Turn read(ByteBuffer file) {
        int at = 2;
        while (file.getShort(0) == (short) 0xFFD8 && (file.get(at) & 0xFF) == 0xFF) {
            int marker = file.get(at + 1) & 0xFF;
            int length = file.getShort(at + 2) & 0xFFFF;
            if (marker == APP1 && file.getInt(at + 4) == 0x45786966) {
                int begin = at + 4 + EXIF_HEADER_BYTES;
                return ofTiff(file.slice(begin, at + 2 + length - begin));
            }
            if (marker == START_OF_SCAN) {
                break;
            }
            at += 2 + length;
        }
        return NONE;
    }

    private static Turn ofTiff(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int entry = 0; entry < entries; entry++) {
            int at = directory + 2 + entry * ENTRY_BYTES;
            if ((tiff.getShort(at) & 0xFFFF) == ORIENTATION_TAG) {
                int said = tiff.getShort(at + 8);
                return said >= 1 && said <= LAST ? new Turn(said) : NONE;
            }
        }
        return NONE;
    }

    /** Whether width and height change places. */
    boolean isSideways() {
        return orientation > 4;
    }

    /** Turns a picture of a width and height upright. */
    AffineTransform upright(int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}
