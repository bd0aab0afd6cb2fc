// SPDX-License-Identifier: EPL-2.0
package org.benchlore.edit.media;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are told by their content and lose everything that is not the picture. */
class MediaShelfTest {

    @TempDir
    Path root;

    private static Map<MediaType, byte[]> all() throws IOException {
        var all = new TreeMap<MediaType, byte[]>();
        all.put(MediaType.PNG, Pictures.png());
        all.put(MediaType.JPEG, Pictures.jpeg(1, ByteOrder.BIG_ENDIAN));
        all.put(MediaType.WEBP, Pictures.webp());
        all.put(MediaType.GIF, Pictures.gif());
        all.put(MediaType.SVG, ("<svg xmlns='http://www.w3.org/2000/svg'><!--" + Pictures.SECRET
                + "--><metadata>" + Pictures.SECRET + "</metadata><rect width='1' height='1'/></svg>").getBytes());
        all.put(MediaType.PDF, "%PDF-1.7\n%%EOF\n".getBytes());
        return all;
    }

    @ParameterizedTest
    @EnumSource
    void theContentTellsTheType(MediaType type) throws IOException {
        assertEquals(Optional.of(type), MediaType.of(all().get(type)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<html/>", "<svg/>", "MZ\u0090", "#!/bin/sh", "GIF88a", "RIFF----WAVE", "<!DOCTYPE svg>"})
    void whatIsNoPictureIsRefused(String content) {
        assertThrows(MediaException.class, () -> MediaShelf.clean(content.getBytes()));
    }

    @ParameterizedTest
    @EnumSource
    void nothingButThePictureStays(MediaType type) throws IOException, MediaException {
        var bytes = all().get(type);
        assertTrue(type == MediaType.PDF || Pictures.holdsSecret(bytes));
        assertFalse(Pictures.holdsSecret(MediaShelf.clean(bytes)));
        assertEquals(Optional.of(type), MediaType.of(MediaShelf.clean(bytes)));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsCleanStaysAsItIs(MediaType type) throws IOException, MediaException {
        var clean = MediaShelf.clean(all().get(type));
        assertArrayEquals(clean, MediaShelf.clean(clean));
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg", "gif"})
    void thePixelsAreUntouched(String format) throws IOException, MediaException {
        var before = Pictures.read(Pictures.plain(format));
        var bytes = format.equals("png") ? Pictures.png() : format.equals("gif") ? Pictures.gif()
                : Pictures.jpeg(1, ByteOrder.LITTLE_ENDIAN);
        var after = Pictures.read(MediaShelf.clean(bytes));
        for (int x = 0; x < before.getWidth(); x++) {
            for (int y = 0; y < before.getHeight(); y++) {
                assertEquals(before.getRGB(x, y), after.getRGB(x, y));
            }
        }
    }

    /** Exif 2.3, 4.6.4: which corner of the stored picture is at the top left; from memory. */
    @ParameterizedTest
    @CsvSource({"1,32,4,4", "2,32,28,4", "3,32,28,12", "4,32,4,12", "5,16,4,4", "6,16,12,4", "7,16,12,28", "8,16,4,28"})
    void theCamerasOrientationBecomesPixels(int orientation, int width, int x, int y) throws IOException, MediaException {
        for (var order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
            var clean = MediaShelf.clean(Pictures.jpeg(orientation, order));
            var image = Pictures.read(clean);
            assertEquals(width, image.getWidth());
            assertTrue(Pictures.isLight(image, x, y));
            assertFalse(Pictures.isLight(image, image.getWidth() - 1 - x, image.getHeight() - 1 - y));
            assertFalse(Pictures.holdsSecret(clean));
        }
    }

    @Test
    void aPictureThatCannotBeTurnedKeepsItsOrientationAndNothingElse() throws IOException, MediaException {
        var put = Orientation.put(Pictures.plain("jpeg"), 6);
        assertEquals(6, JpegCleaner.clean(put).orientation());
    }

    @Test
    void theSamePictureLiesOnTheShelfOnce() throws IOException, MediaException {
        var shelf = new MediaShelf(root);
        var first = shelf.add(Pictures.png());
        var second = shelf.add(MediaShelf.clean(Pictures.png()));
        assertEquals(first, second);
        assertTrue(first.path().matches("media/[0-9a-f]{32}\\.png"), first.path());
        assertArrayEquals(MediaShelf.clean(Pictures.png()), Files.readAllBytes(root.resolve(first.path())));
    }

    @Test
    void fourTurnsAreNone() throws IOException, MediaException {
        var shelf = new MediaShelf(root);
        var path = shelf.add(Pictures.plain("png")).path();
        var turned = shelf.turn(path, 1);
        assertNotEquals(path, turned.path());
        assertTrue(Pictures.isLight(Pictures.read(Files.readAllBytes(root.resolve(turned.path()))), 12, 4));
        var back = shelf.turn(turned.path(), 3);
        var before = Pictures.read(Pictures.plain("png"));
        var after = Pictures.read(Files.readAllBytes(root.resolve(back.path())));
        assertEquals(before.getRGB(3, 3), after.getRGB(3, 3));
        assertEquals(before.getRGB(30, 12), after.getRGB(30, 12));
        assertEquals(path, shelf.turn(path, 4).path());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../outside.png", "media/../../outside.png", "shop.xmi", "media/none.png"})
    void nothingOutsideTheShelfIsTurned(String path) {
        assertThrows(MediaException.class, () -> new MediaShelf(root).turn(path, 1));
    }

    @Test
    void aFileThatIsTooLargeIsRefusedWithItsLimit() {
        var large = Arrays.copyOf(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}, MediaShelf.MOST_BYTES + 1);
        assertEquals("The file is larger than 25 MB: make it smaller and add it again",
                assertThrows(MediaException.class, () -> MediaShelf.clean(large)).getMessage());
    }

    @Test
    void aPictureOfTooManyPixelsIsNotOpened() throws IOException {
        var png = Pictures.plain("png");
        png[16] = 0x7f;
        assertThrows(MediaException.class, () -> Turning.upright(png, MediaType.PNG, 6));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PDF")
    void aFileThatIsCutOffIsRefusedWithASentence(MediaType type) throws IOException, MediaException {
        var whole = MediaShelf.clean(all().get(type));
        for (int length = 0; length < whole.length; length += 1 + whole.length / 200) {
            var part = Arrays.copyOf(whole, length);
            var refusal = assertThrows(MediaException.class, () -> MediaShelf.clean(part), type + " " + length);
            assertTrue(refusal.getMessage().contains(":"), refusal.getMessage());
        }
    }

    @ParameterizedTest
    @EnumSource
    void noDamageMakesItFail(MediaType type) throws IOException {
        var random = new Random(20261125L + type.ordinal());
        for (int i = 0; i < 400; i++) {
            var bytes = all().get(type);
            for (int change = 0; change <= i % 4; change++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            try {
                MediaShelf.clean(bytes);
            } catch (MediaException e) {
                assertTrue(e.getMessage().contains(":"), e.getMessage());
            }
        }
    }
}
