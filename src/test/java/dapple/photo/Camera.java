package dapple.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Takes pictures for tests. */
public final class Camera {
    /** What the camera says of the place; it must not be kept. */
    public static final String PLACE = "behind the third house";

    private Camera() {}

    /** Red in its left half, blue in its right. */
    static BufferedImage scene(int width, int height) {
        BufferedImage scene = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = scene.createGraphics();
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height);
        pen.setColor(Color.BLUE);
        pen.fillRect(width / 2, 0, width - width / 2, height);
        pen.dispose();
        return scene;
    }

    static byte[] file(BufferedImage picture, String format) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(picture, format, bytes);
            return bytes.toByteArray();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    public static byte[] jpeg(int width, int height) {
        return file(scene(width, height), "jpeg");
    }

    /**
     * A JPEG as phones write them, by the layout of Exif 2.3 (CIPA DC-008, from memory): an orientation, and a GPS directory
     * with a latitude and the name of a place.
     */
    public static byte[] jpegWithExif(int width, int height, int orientation) {
        byte[] plain = jpeg(width, height);
        byte[] exif = exif(orientation);
        return ByteBuffer.allocate(plain.length + exif.length + 4)
                .put(plain, 0, 2)
                .putShort((short) 0xFFE1)
                .putShort((short) (exif.length + 2))
                .put(exif)
                .put(plain, 2, plain.length - 2)
                .array();
    }

    private static byte[] exif(int orientation) {
        byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
        int gps = 8 + 2 + 2 * 12 + 4;
        int data = gps + 2 + 3 * 12 + 4;
        ByteBuffer exif = ByteBuffer.allocate(6 + data + 24 + place.length);
        exif.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII))
                .putShort((short) 42)
                .putInt(8);
        exif.putShort((short) 2);
        entry(exif, 0x0112, 3, 1, orientation << 16);
        entry(exif, 0x8825, 4, 1, gps);
        exif.putInt(0);
        exif.putShort((short) 3);
        entry(exif, 0x0001, 2, 2, 'N' << 24);
        entry(exif, 0x0002, 5, 3, data);
        entry(exif, 0x001C, 7, place.length, data + 24);
        exif.putInt(0);
        exif.putInt(52).putInt(1).putInt(31).putInt(1).putInt(12).putInt(1);
        return exif.put(place).array();
    }

    private static void entry(ByteBuffer exif, int tag, int type, int count, int content) {
        exif.putShort((short) tag).putShort((short) type).putInt(count).putInt(content);
    }

    /** A PNG whose head, by ISO/IEC 15948, names a size that its few bytes would unfold to. */
    static byte[] pngThatUnfoldsTo(int width, int height) {
        byte[] small = file(scene(1, 1), "png");
        ByteBuffer png = ByteBuffer.wrap(small.clone());
        png.putInt(16, width).putInt(20, height);
        CRC32 check = new CRC32();
        check.update(png.array(), 12, 17);
        png.putInt(29, (int) check.getValue());
        return png.array();
    }

    static BufferedImage read(byte[] file) {
        try {
            return ImageIO.read(new ByteArrayInputStream(file));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
