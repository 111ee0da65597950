package dapple.photo;

import dapple.photo.Prepared.Encoded;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.springframework.stereotype.Component;

/** Decodes a picture and encodes it anew, turned upright and no larger than is kept; whatever else was in the file is gone. */
@Component
class PicturePreparing {
    static final int MOST_BYTES = 8_000_000;
    static final long MOST_PIXELS = 40_000_000;

    /**
     * What is kept of a file.
     *
     * @throws PhotoRefusedException if it is no picture that can be read, or too large a one
     */
    Prepared prepare(byte[] file) {
        if (file.length == 0) {
            throw new PhotoRefusedException(PhotoFault.NONE_CHOSEN);
        }
        if (file.length > MOST_BYTES) {
            throw new PhotoRefusedException(PhotoFault.TOO_LARGE);
        }
        BufferedImage decoded = decode(file);
        Turn turn = Turn.of(file);
        BufferedImage full = scaled(decoded, turn, Scale.FULL);
        BufferedImage small = scaled(full, Turn.NONE, Scale.SMALL);
        return new Prepared(full.getWidth(), full.getHeight(), new Encoded(Jpeg.of(full)), new Encoded(Jpeg.of(small)));
    }

    /** One at a time: the pixels of a large picture take more memory than all else that the program does. */
    private static synchronized BufferedImage decode(byte[] file) {
        try (ImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(input);
            if (!readers.hasNext()) {
                throw new PhotoRefusedException(PhotoFault.NO_PICTURE);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(input, true, true);
                return decode(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
            throw new PhotoRefusedException(PhotoFault.NO_PICTURE);
        }
    }

    /** Its size stands in its head: what unfolds to too many pixels is refused before one of them is read. */
    private static BufferedImage decode(ImageReader reader) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new PhotoRefusedException(PhotoFault.TOO_MANY_PIXELS);
        }
        int every = Math.max(1, Math.max(width, height) / Scale.FULL.longestEdgePixels());
        ImageReadParam asked = reader.getDefaultReadParam();
        asked.setSourceSubsampling(every, every, 0, 0);
        return reader.read(0, asked);
    }

    private static BufferedImage scaled(BufferedImage picture, Turn turn, Scale scale) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        double factor = Math.min(1, scale.longestEdgePixels() / (double) Math.max(width, height));
        int across = pixels(turn.isSideways() ? height : width, factor);
        int down = pixels(turn.isSideways() ? width : height, factor);
        BufferedImage drawn = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = drawn.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, across, down);
        AffineTransform place = AffineTransform.getScaleInstance(factor, factor);
        place.concatenate(turn.upright(width, height));
        pen.drawImage(picture, place, null);
        pen.dispose();
        return drawn;
    }

    private static int pixels(int edge, double factor) {
        return Math.max(1, (int) Math.round(edge * factor));
    }
}
