// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures on their way into a note. */
class PhotoTest {

    private static final Arrow ACROSS = new Arrow(0.1, 0.5, 0.9, 0.5);

    private static byte[] white(String format, int width, int height) throws Exception {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                image.setRGB(x, y, 0xffffff);
            }
        }
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    private static boolean isRed(BufferedImage image, int x, int y) {
        int colour = image.getRGB(x, y);
        return (colour >> 16 & 0xff) > 0xa0 && (colour >> 8 & 0xff) < 0x60 && (colour & 0xff) < 0x60;
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void theArrowBecomesPixelsFromItsEndToItsTip(String format) throws Exception {
        var photo = Photo.of(white(format, 400, 200)).pointed(Optional.of(ACROSS));
        var image = Pictures.read(photo.drawn());
        assertEquals(List.of(true, true, false, false), List.of(isRed(image, 60, 100), isRed(image, 350, 100),
                isRed(image, 20, 100), isRed(image, 200, 20)));
    }

    @Test
    void theHeadIsAtTheTip() throws Exception {
        var image = Pictures.read(Photo.of(white("png", 400, 200)).pointed(Optional.of(ACROSS)).drawn());
        assertTrue(isRed(image, 350, 104), "the head is wider than the shaft");
        assertFalse(isRed(image, 60, 104), "the shaft is slender");
    }

    @Test
    void turningTakesTheArrowAlong() throws Exception {
        var image = Pictures.read(Photo.of(white("png", 400, 200)).pointed(Optional.of(ACROSS)).turned().drawn());
        assertEquals(List.of(200, 400), List.of(image.getWidth(), image.getHeight()));
        assertTrue(isRed(image, 100, 350));
        assertTrue(isRed(image, 104, 350), "the tip points down now");
    }

    @Test
    void fourTurnsLeaveEveryByteAsItWas() throws Exception {
        var photo = Photo.of(Pictures.plain("png"));
        assertArrayEquals(photo.drawn(), photo.turned().turned().turned().turned().drawn());
    }

    @Test
    void anArrowCanBeTakenOffAgain() throws Exception {
        var photo = Photo.of(Pictures.plain("jpeg"));
        assertArrayEquals(photo.drawn(), photo.pointed(Optional.of(ACROSS)).pointed(Optional.empty()).drawn());
    }

    @Test
    void whereItWasTakenIsGoneFromWhatIsShownAndFromWhatIsKept() throws Exception {
        var photo = Photo.of(Pictures.jpeg(6, ByteOrder.BIG_ENDIAN)).turned().pointed(Optional.of(ACROSS));
        for (var bytes : List.of(photo.upright(), photo.drawn())) {
            assertFalse(new String(bytes, StandardCharsets.ISO_8859_1).contains(Pictures.SECRET));
        }
    }

    @Test
    void aDrawingIsDefusedBeforeAnybodySeesIt() throws Exception {
        var svg = "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9' onload='steal()'><script>steal()</script>"
                + "<rect width='9' height='9'/></svg>";
        var photo = Photo.of(svg.getBytes(StandardCharsets.UTF_8));
        var shown = new String(photo.upright(), StandardCharsets.UTF_8);
        assertFalse(shown.contains("steal"), shown);
        assertTrue(shown.contains("rect"), shown);
        assertFalse(photo.canBeDrawnOn());
    }

    @Test
    void whatIsTooLargeSaysWhatToDo() {
        var problem = assertThrows(MediaException.class, () -> Photo.of(new byte[MediaShelf.MOST_BYTES + 1]));
        assertEquals("The file is larger than 25 MB: make it smaller and add it again", problem.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.3, 0.6, 0.9", "0, 0, 1, 1"})
    void fourTurnsBringAnArrowBack(double fromX, double fromY, double toX, double toY) {
        var arrow = new Arrow(fromX, fromY, toX, toY);
        var back = arrow.turned().turned().turned().turned();
        assertEquals(arrow.toX(), back.toX(), 1e-9);
        assertEquals(arrow.fromY(), back.fromY(), 1e-9);
    }

    @Test
    void anArrowStaysWithinThePicture() {
        assertEquals(new Arrow(0.3, 0.75, 1, 0), Arrow.first().tipMoved(7, -7));
        assertEquals(new Arrow(0, 1, 0.5, 0.5), Arrow.first().endMoved(-7, 7));
    }

    @Test
    void anArrowWithoutLengthIsStillDrawn() {
        assertEquals(14, new Arrow(0.5, 0.5, 0.5, 0.5).outline(100, 100).length);
    }
}
