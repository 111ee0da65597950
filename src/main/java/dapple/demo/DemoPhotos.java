package dapple.demo;

import dapple.photo.NewPhoto;
import dapple.photo.Photos;
import dapple.reading.CoverSaid;
import dapple.reading.VisitCovers;
import dapple.reading.Visitor;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.springframework.context.annotation.Profile;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A drawn picture of an invented enclosure, in place of a photo. */
@Component
@Profile("demo")
class DemoPhotos {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 900;

    private static final String NEWEST_VISIT =
            "select entry_key from visit where enclosure_id = :id order by begun_at desc fetch first 1 row only";

    private final Photos photos;
    private final VisitCovers covers;
    private final JdbcClient database;

    DemoPhotos(Photos photos, VisitCovers covers, JdbcClient database) {
        this.photos = photos;
        this.covers = covers;
        this.database = database;
    }

    /** On the newest visit of an enclosure. */
    void take(DemoTeam.Members members, long enclosure) {
        UUID visitKey = database.sql(NEWEST_VISIT)
                .param("id", enclosure)
                .query(UUID.class)
                .single();
        Visitor keeper = new Visitor(members.siteId(), members.keeper());
        photos.add(new NewPhoto(keeper, visitKey, enclosure, UUID.randomUUID()), drawn());
        covers.say(keeper, visitKey, enclosure, CoverSaid.CLOSED);
    }

    private static byte[] drawn() {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        draw(pen);
        pen.dispose();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(picture, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot draw the demo's photo", cause);
        }
    }

    /** A back wall, sand, a slab under the lamp, a branch. */
    private static void draw(Graphics2D pen) {
        pen.setColor(new Color(0xC9B48A));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(new Color(0xF4EBC8));
        pen.fillOval(80, -260, 620, 820);
        pen.setColor(new Color(0xB08A55));
        pen.fillRect(0, 660, WIDTH, HEIGHT - 660);
        pen.setColor(new Color(0x6F6A60));
        pen.fillRoundRect(180, 590, 420, 120, 60, 60);
        pen.setColor(new Color(0x5B4329));
        pen.fillPolygon(new int[] {640, 1130, 1150, 660}, new int[] {700, 320, 350, 735}, 4);
    }
}
