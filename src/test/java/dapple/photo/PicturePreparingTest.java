package dapple.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PicturePreparingTest {
    private final PicturePreparing preparing = new PicturePreparing();

    @Test
    void theCameraSaysThePlace() {
        assertThat(text(Camera.jpegWithExif(64, 48, 1))).contains("Exif", Camera.PLACE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"FULL", "SMALL"})
    void nothingButThePictureIsKept(Scale scale) {
        Prepared prepared = preparing.prepare(Camera.jpegWithExif(64, 48, 1));
        assertThat(text(prepared.in(scale))).doesNotContain("Exif").doesNotContain(Camera.PLACE);
    }

    /** JPEG's segments APP1 to APP15 and COM carry metadata [ISO/IEC 10918-1]; APP0 is its own head. */
    @Test
    void noSegmentOfMetadataIsKept() {
        byte[] kept = preparing.prepare(Camera.jpegWithExif(64, 48, 6)).in(Scale.FULL);
        ByteBuffer file = ByteBuffer.wrap(kept);
        for (int at = 2; unsigned(file.get(at + 1)) != 0xDA; at += 2 + file.getShort(at + 2)) {
            assertThat(unsigned(file.get(at + 1))).isNotEqualTo(0xFE);
            assertThat(unsigned(file.get(at + 1))).matches(marker -> marker <= 0xE0 || marker > 0xEF);
        }
    }

    private static int unsigned(byte one) {
        return one & 0xFF;
    }

    @ParameterizedTest
    @CsvSource({"3000, 1200, 1600, 640", "1200, 3000, 640, 1600", "4000, 3000, 1600, 1200", "800, 600, 800, 600"})
    void aLargePictureIsMadeSmaller(int width, int height, int across, int down) {
        Prepared prepared = preparing.prepare(Camera.jpeg(width, height));
        assertThat(Camera.read(prepared.in(Scale.FULL)))
                .returns(across, BufferedImage::getWidth)
                .returns(down, BufferedImage::getHeight);
    }

    @Test
    void theSmallOneIsSmall() {
        assertThat(Camera.read(preparing.prepare(Camera.jpeg(1600, 1200)).in(Scale.SMALL)))
                .returns(320, BufferedImage::getWidth)
                .returns(240, BufferedImage::getHeight);
    }

    /**
     * Exif names where the 0th row and column of the file belong (CIPA DC-008, from memory): 1 top left, 2 top right, 3 bottom
     * right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left bottom. The red half is the file's left, so the
     * first column: it belongs where that is.
     */
    @ParameterizedTest
    @CsvSource({"1, left", "2, right", "3, right", "4, left", "5, top", "6, top", "7, bottom", "8, bottom"})
    void aPictureIsTurnedUpright(int orientation, String red) {
        BufferedImage kept = Camera.read(
                preparing.prepare(Camera.jpegWithExif(60, 40, orientation)).in(Scale.FULL));
        int x = red.equals("left") ? 5 : red.equals("right") ? kept.getWidth() - 5 : kept.getWidth() / 2;
        int y = red.equals("top") ? 5 : red.equals("bottom") ? kept.getHeight() - 5 : kept.getHeight() / 2;
        assertThat(kept.getWidth()).isEqualTo(orientation > 4 ? 40 : 60);
        assertThat(isRed(new Color(kept.getRGB(x, y)))).isTrue();
    }

    private static boolean isRed(Color colour) {
        return colour.getRed() > 200 && colour.getBlue() < 60;
    }

    @Test
    void aSeeThroughPictureLiesOnWhite() {
        BufferedImage clear = new BufferedImage(8, 8, BufferedImage.TYPE_INT_ARGB);
        BufferedImage kept =
                Camera.read(preparing.prepare(Camera.file(clear, "png")).in(Scale.FULL));
        assertThat(new Color(kept.getRGB(4, 4))).isEqualTo(Color.WHITE);
    }

    /** Noise is what a JPEG cannot make small. */
    @Test
    void aPictureOfMuchDetailFitsItsColumn() {
        BufferedImage noise = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Random chance = new Random(3);
        for (int x = 0; x < 1600; x++) {
            for (int y = 0; y < 1200; y++) {
                noise.setRGB(x, y, chance.nextInt());
            }
        }
        assertThat(preparing.prepare(Camera.file(noise, "jpeg")).in(Scale.FULL).length)
                .isLessThanOrEqualTo(Jpeg.MOST_BYTES);
    }

    @Test
    void whatUnfoldsToTooManyPixelsIsRefusedByItsHead() {
        assertFault(PhotoFault.TOO_MANY_PIXELS, Camera.pngThatUnfoldsTo(100_000, 100_000));
    }

    @Test
    void aHeadThatPromisesMoreThanItHasIsNoPicture() {
        assertFault(PhotoFault.NO_PICTURE, Camera.pngThatUnfoldsTo(5000, 5000));
    }

    @Test
    void aFileOfMoreThanEightMegabytesIsRefused() {
        assertFault(PhotoFault.TOO_LARGE, new byte[PicturePreparing.MOST_BYTES + 1]);
    }

    @Test
    void nothingIsNoPhoto() {
        assertFault(PhotoFault.NONE_CHOSEN, new byte[0]);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "%PDF-1.7", "<svg xmlns='http://www.w3.org/2000/svg'/>", "\u00FF\u00D8\u00FF\u00E0"})
    void whatIsNoPictureIsRefused(String content) {
        assertFault(PhotoFault.NO_PICTURE, content.getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void aDamagedExifLeavesThePictureAsItLies() {
        byte[] file = Camera.jpegWithExif(60, 40, 6);
        file[16] = 0x7F;
        assertThat(preparing.prepare(file).widthPixels()).isEqualTo(60);
    }

    private void assertFault(PhotoFault fault, byte[] file) {
        assertThatThrownBy(() -> preparing.prepare(file))
                .isInstanceOfSatisfying(
                        PhotoRefusedException.class,
                        refused -> assertThat(refused.fault()).isEqualTo(fault));
    }

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }
}
