package dapple.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pictures as JPEG, without metadata. */
final class Jpeg {
    /** What a column takes. */
    static final int MOST_BYTES = 1_000_000;

    private static final float QUALITY = 0.8F;
    private static final float LEAST_QUALITY = 0.2F;
    private static final float STEP = 0.2F;

    private Jpeg() {}

    /** As good as usual; a picture of much detail less so, until it is small enough to be kept. */
    static byte[] of(BufferedImage picture) {
        float quality = QUALITY;
        byte[] written = write(picture, quality);
        while (written.length > MOST_BYTES && quality > LEAST_QUALITY) {
            quality = Math.max(LEAST_QUALITY, quality - STEP);
            written = write(picture, quality);
        }
        return written;
    }

    private static byte[] write(BufferedImage picture, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam asked = writer.getDefaultWriteParam();
            asked.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            asked.setCompressionQuality(quality);
            writer.setOutput(output);
            writer.write(null, new IIOImage(picture, null, null), asked);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot write a picture", cause);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
